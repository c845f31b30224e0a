import { listed } from '../../base/listed';
import { connectorName, leadName, unitName } from '../../document/names';
import type { FindingData } from '../finding-data';
import type { WordsFor } from './finding-words';
import { pinsOf, pinWithJob, plugText, voltsText } from './names';
import { ampsText, fuseText, voltsSpanText } from './numbers';
import { kindOf, where } from './where';

/** USB, 1394, audio and fans: leads of more than two wires, and cables. */
export const PORT_WORDS: WordsFor<
  | 'usb-on-1394'
  | 'ieee1394-on-usb'
  | 'hd-audio-on-ac97'
  | 'ac97-on-hd-audio'
  | 'supply-reversed'
  | 'supply-on-wire'
  | 'standby-overload'
  | 'fan-supply-on-signal'
  | 'fan-unpowered'
  | 'fan-overload'
  | 'watched-header-silent'
  | 'ground-on-over-current'
  | 'ports-mixed'
  | 'pins-joined'
> = {
  'usb-on-1394': ({ data: { plug, connector } }, build) => ({
    title: `+12\u00a0V would reach ${plugText(build, plug)} and could destroy what is plugged in.`,
    reason: `${connectorName(build, connector)} is a 1394 header. It has the shape and the missing pin of a USB header, and +12\u00a0V where USB has ground.`,
  }),

  'ieee1394-on-usb': ({ data: { plug, connector } }, build) => ({
    title: `The USB supply would reach the data wires of ${plugText(build, plug)} and could destroy port or device.`,
    reason: `${connectorName(build, connector)} is a USB header. It has the shape and the missing pin of a 1394 header, and +5\u00a0V where 1394 has data.`,
  }),

  'hd-audio-on-ac97': ({ data: { plug, connector, variant, volts, presence } }, build) => {
    const header = connectorName(build, connector);
    switch (variant) {
      case 'supply-on-sense':
        return {
          title: `+5\u00a0V would reach the sense wire of ${plugText(build, plug)}.`,
          reason: `${header} is an AC’97 header with its supply on pin\u00a07, where an HD audio lead has the sense wire. With a jack in, it goes on to the return pins.`,
        };
      case 'supply-on-presence':
        return {
          title: `+5\u00a0V would run through the presence wire of ${plugText(build, plug)} to ground.`,
          reason: `${header} is an early AC’97 header with its supply on pin\u00a04, which an HD audio panel joins to ground, some of them without a resistor.`,
        };
      case 'passive':
        return {
          title: `The jacks of ${plugText(build, plug)} would not be detected.`,
          reason: `${header} is an AC’97 header: it has no sense pins. The rear output may stay silent or never go silent.${
            volts && presence === 'low'
              ? ` Its presence pin would be at ${voltsSpanText(volts)}, and tells of an HD panel.`
              : ''
          }`,
        };
    }
  },

  'ac97-on-hd-audio': ({ data: { plug, connector, presence, volts } }, build) => ({
    title: `The jacks of ${plugText(build, plug)} would not be detected.`,
    reason: `${connectorName(build, connector)} expects an HD audio lead: an AC’97 lead brings no sense wires.${
      presence === 'low' && volts
        ? ` Its ground wire on the presence pin makes the board believe that an HD panel is there: ${voltsSpanText(volts)} instead of the pull-up’s level.`
        : ''
    }`,
  }),

  'supply-reversed': (finding, build) => ({
    title: `Whatever is plugged into the ${kindOf(finding, build).name} would be fed ${voltsText(finding.data.volts)} backwards.`,
    reason: `${where(finding, build)} Supply and ground are in each other’s place: ${voltsSpanText(finding.data.arrives)} at the empty socket.${fuseText(finding.data.tripAmps)}`,
  }),

  'standby-overload': ({ data: { leastAmps, amps, mostAmps, oldMostAmps, ports } }) => ({
    title: 'Full front sockets could overload the standby supply.',
    reason: `While the machine is off, ${ports} ports at the front are live. They may draw ${ampsText(leastAmps)} to ${ampsText(amps)} together; +5\u00a0V standby is often rated ${ampsText(mostAmps)}, on old supplies as little as ${ampsText(oldMostAmps)}. Boards with a wake jumper can lay such sockets on the main supply instead.`,
  }),

  'supply-on-wire': (finding, build) => ({
    title: `${voltsText(finding.data.volts)} would reach a wire of the ${kindOf(finding, build).name} that is not made for it.`,
    reason: where(finding, build),
  }),

  'fan-supply-on-signal': (finding, build) => ({
    title: `${voltsText(finding.data.volts)} would reach a wire of the fan that is not made for it.`,
    reason: `${where(finding, build)} Fan and header could be damaged.`,
  }),

  'fan-unpowered': (finding, build) => ({
    title: 'The fan would not turn.',
    reason: `${where(finding, build)} It needs ground and +12\u00a0V.`,
  }),

  'fan-overload': (
    { data: { connector, hub, fedBySupply, startAmps, runningAmps, ratedAmps, unread } },
    build,
  ) => {
    const header = connectorName(build, connector);
    const name = hub === undefined ? undefined : unitName(build, hub);
    const carrier = fedBySupply === true && name !== undefined ? name : header;
    const through = name !== undefined && fedBySupply !== true ? ` through ${name}` : '';
    const takes =
      runningAmps > ratedAmps
        ? `take ${ampsText(runningAmps)} while they run`
        : `take ${ampsText(startAmps)} when they start`;
    return {
      title: `The fans on ${carrier}${through} ${takes}, and it may carry ${ampsText(ratedAmps)}.`,
      reason: `Together they take ${ampsText(runningAmps)} running and ${ampsText(startAmps)} for a moment at the start. ${overloadText(fedBySupply === true, unread)}`,
    };
  },

  'watched-header-silent': ({ data: { connector, fan, isEmpty } }, build) => ({
    title: `No fan would report its speed on ${connectorName(build, connector)}, which the board watches.`,
    reason: `Without it the machine stops after seconds, or does not go on to start.${
      fan === undefined
        ? ''
        : isEmpty
          ? ` ${leadName(build, fan)} belongs there.`
          : ` ${leadName(build, fan)} is there, but tells no speed.`
    }`,
  }),

  'ground-on-over-current': (finding, build) => ({
    title: 'The board would report a short that is none, and switch the ports or itself off.',
    reason: `${where(finding, build)} This board watches that pin for too much current.`,
  }),

  'ports-mixed': (finding, build) => ({
    title: `The ${kindOf(finding, build).name} would not work.`,
    reason: `Its wires are on pins of ports ${listed(finding.data.channels)}: ${pinsOf(build, finding.pins)}.`,
  }),

  'pins-joined': ({ severity, data: { first, second } }, build) => ({
    title:
      severity === 'danger' ? 'The cable would short a supply.' : 'The cable would hold a pin at ground.',
    reason: `It joins ${pinWithJob(build, first.pin)} of ${connectorName(build, first.pin.connector)} and ${pinWithJob(build, second.pin)} of ${connectorName(build, second.pin.connector)}.`,
  }),
};

/** What comes of too much current, or what to read before that is certain. */
function overloadText(onHub: boolean, unread: FindingData['fan-overload']['unread']): string {
  switch (unread) {
    case 'header':
      return 'Nobody has read the rating of this header; about 1\u00a0A is usual. See the board’s manual.';
    case 'hub':
      return 'Nobody has read the rating of this hub. See its maker’s sheet.';
    case 'fan':
      return 'Nobody has read the labels of all of these fans; for those, what is usual was added up. Look at them.';
    case undefined:
      return onHub
        ? 'More than the rating can burn the hub or the lead that feeds it.'
        : 'More than the rating can burn the header or the trace to it.';
  }
}
