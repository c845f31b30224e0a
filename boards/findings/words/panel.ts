import type { Volts } from '../../base/units';
import type { Span } from '../../circuit/corner';
import { LED_REVERSE_VOLTS } from '../../circuit/part-devices';
import { LED_MOST_AMPS } from '../../circuit/readings/glow';
import { CONTACT_MOST_AMPS } from '../../circuit/readings/wire-loads';
import type { Build } from '../../document/build';
import { connectorName } from '../../document/names';
import { jobName } from '../../signals/job-names';
import { isSwitch, staysClosed } from '../../signals/part-traits';
import type { Job } from '../../signals/signal';
import type { FindingOf } from '../finding';
import type { Said, WordsFor } from './finding-words';
import { pinsOf, plugText, signalName, voltsText } from './names';
import { ampsSpanText, ampsText, fuseText, voltsExactText, voltsSpanText, wattsText } from './numbers';
import { kindOf, partName, partOf, where } from './where';

const THERE: Readonly<Partial<Record<Job, string>>> = {
  'power-switch': 'would start the machine, and switch it off after a long press',
  'reset-switch': 'would reset the machine',
  'case-open': 'would report an open case',
  'key-lock': 'would lock the keyboard',
  'clear-settings': 'would clear the settings',
  'drive-led': 'would show drive activity',
  'power-led': 'would show whether the machine is on',
  'message-led': 'would show messages',
};

const HELD: Readonly<Partial<Record<Job, Pick<Said, 'title'> & { readonly because: string }>>> = {
  'power-switch': {
    title: 'The machine would start by itself and go off again after some seconds.',
    because:
      'It holds the power switch input like a finger on the button; four seconds or more force the machine off',
  },
  'reset-switch': {
    title: 'The machine would stay in reset.',
    because: 'It holds the reset input like a finger on the button: fans may turn, and nothing else starts',
  },
  'case-open': {
    title: 'The board would report an open case all the time.',
    because: 'It joins the case-open input to ground like the switch in the lid',
  },
};

function acrossLed({ amps, reverseVolts }: { readonly amps: Span; readonly reverseVolts: Volts }): string {
  return reverseVolts === 0
    ? `${ampsSpanText(amps)} would flow, and an indicator LED bears ${ampsText(LED_MOST_AMPS)}.`
    : `${voltsExactText(reverseVolts)} backwards, where data sheets allow ${voltsExactText(LED_REVERSE_VOLTS)}.`;
}

/** The one state in which a power LED the wrong way round may light. */
function whenAsleep(finding: FindingOf<'reversed'>, build: Build): string {
  const { job } = kindOf(finding, build);
  return job === 'power-led' && finding.data.effect === 'dark'
    ? ' Asleep it may light, where the board turns the pair round for a two-colour LED.'
    : '';
}

function backwards(reverseVolts: Volts): string {
  return reverseVolts < 0.5 ? '' : `: up to ${voltsExactText(reverseVolts)} backwards, and no current`;
}

/** Switches, LEDs, speakers: parts with two wires. */
export const PANEL_WORDS: WordsFor<
  | 'input-held'
  | 'on-clear-settings'
  | 'led-depends'
  | 'led-always-lit'
  | 'led-across-supply'
  | 'supply-joined'
  | 'switches-exchanged'
  | 'places-exchanged'
  | 'reversed'
  | 'pair-split'
  | 'wrong-function'
  | 'wrong-pins'
  | 'panel-on-serial'
> = {
  'input-held': (finding, build) => {
    const { job, volts, certain } = finding.data;
    const held = HELD[job];
    const kind = kindOf(finding, build);
    const closed = staysClosed(kind) && partOf(finding, build).condition === undefined;
    const title = held?.title ?? `The ${jobName(job)} input would be held all the time.`;
    const level = `With no button pressed the input is at ${voltsSpanText(volts)}`;
    if (!certain) {
      return {
        title: `The ${jobName(job)} input might be held all the time.`,
        reason: `${where(finding, build)} ${level}: a low to some boards and not to others.`,
      };
    }
    return {
      title: closed ? title.replace(/( all the time)?\.$/, ` while the ${kind.name} is closed.`) : title,
      reason: `${where(finding, build)} ${level}. ${held?.because ?? 'It joins that input to ground'}.`,
    };
  },

  'on-clear-settings': (finding, build) => ({
    title: 'The board could lose its settings, or not start at all.',
    reason: `${where(finding, build)} That is the jumper that clears the settings: its cap belongs on the two pins that keep them, and no lead.`,
  }),

  'led-depends': (finding, build) => ({
    title: `${partName(finding, build)} would be ${finding.data.least} on some boards.`,
    reason: `${where(finding, build)} Over the usual resistors ${ampsSpanText(finding.data.amps)} would flow; from about 1\u00a0mA on an LED is plainly lit.`,
  }),

  'led-always-lit': (finding, build) => ({
    // A power LED that is lit while the machine is on shows as much, if not what the board would have it show.
    title:
      kindOf(finding, build).job === 'power-led'
        ? `${partName(finding, build)} would be lit, but not as the board switches it.`
        : `${partName(finding, build)} would be lit all the time and show nothing.`,
    reason: `${where(finding, build)} ${ampsSpanText(finding.data.amps)} would flow whenever the machine is on. Its − has to be on the pin that the board switches, not on ground.`,
  }),

  'led-across-supply': (finding, build) => ({
    title:
      finding.data.reverseVolts === 0
        ? `${partName(finding, build)} could burn out.`
        : `${partName(finding, build)} would stay dark and could be damaged.`,
    reason: `${where(finding, build)} On ${voltsText(finding.data.volts)} there is no resistor before it, as there is on the board’s LED pins: ${acrossLed(finding.data)}`,
  }),

  'supply-joined': (finding, build) => {
    const { volts, other, amps, watts, tripAmps } = finding.data;
    const kind = kindOf(finding, build);
    const opens = isSwitch(kind) && partOf(finding, build).condition !== 'stuck';
    const when = !opens ? '' : staysClosed(kind) ? ' while it is closed' : ' when it is pressed';
    return other === 'ground'
      ? {
          title: `${partName(finding, build)} would short ${voltsText(volts)} to ground${when}.`,
          reason: `${where(finding, build)} ${tripAmps === undefined ? `Up to ${ampsText(amps)} would flow, ${wattsText(watts)} of heat in each thin wire; a contact is made for ${ampsText(CONTACT_MOST_AMPS)}.` : fuseText(tripAmps).trimStart()}`,
        }
      : {
          title: `${partName(finding, build)} would put ${voltsText(volts)} on the ${signalName(other)} pin${when}.`,
          reason: `${where(finding, build)} That pin is not made for a supply; up to ${ampsText(amps)} would flow.`,
        };
  },

  'switches-exchanged': ({ data: { power, reset }, pins }, build) => ({
    title: 'The power button would reset the machine, and the reset button would start it.',
    reason: `${plugText(build, power)} and ${plugText(build, reset)} are in each other’s place on ${pinsOf(build, pins)}.`,
  }),

  'places-exchanged': ({ data: { first, second }, pins }, build) => ({
    title: `${plugText(build, first)} and ${plugText(build, second)} are in each other’s place.`,
    reason: `They are on ${pinsOf(build, pins)}, each on the other’s pins.`,
  }),

  reversed: (finding, build) => {
    const name = partName(finding, build);
    const titles = {
      dark: `${name} would stay dark.`,
      dead: `${name} would not work.`,
      'other-colour': `${name} would show its other colour first.`,
      harm: `${name} would be fed the wrong way round.`,
    };
    return {
      title: titles[finding.data.effect],
      reason: `${where(finding, build)} It is the wrong way round${backwards(finding.data.reverseVolts)}.${whenAsleep(finding, build)}`,
    };
  },

  'pair-split': (finding, build) => {
    const { acts } = finding.data;
    const name = partName(finding, build);
    const reason = `${where(finding, build)} That is half of one pair and half of another.`;
    if (acts === undefined) return { title: `${name} would do nothing.`, reason };
    return acts === kindOf(finding, build).job
      ? { title: `${name} would work, but on another lead’s pin.`, reason }
      : { title: `${name} ${THERE[acts] ?? `would act as ${jobName(acts)}`}.`, reason };
  },

  'wrong-function': (finding, build) => {
    const { acts } = finding.data;
    const kind = kindOf(finding, build);
    const does = acts === undefined ? 'would not work' : (THERE[acts] ?? `would act as ${jobName(acts)}`);
    return {
      title:
        kind.job === 'clear-settings'
          ? 'The cap is not on its jumper.'
          : `${partName(finding, build)} ${does}.`,
      reason: `${where(finding, build)} It is made for ${jobName(kind.job)} pins.`,
    };
  },

  'wrong-pins': (finding, build) => ({
    title: `${partName(finding, build)} would not work.`,
    reason: `${where(finding, build)} The header is the right one, the pins are not.`,
  }),

  'panel-on-serial': ({ severity, data: { plug, connector } }, build) => ({
    title:
      severity === 'danger'
        ? `The serial port would drive ${plugText(build, plug)}, and its LEDs could be damaged.`
        : `${plugText(build, plug)} would do nothing on the serial port.`,
    reason: `${connectorName(build, connector)} is a serial header: it has the same missing pin as a panel header, but its lines swing to both sides of ground.`,
  }),
};
