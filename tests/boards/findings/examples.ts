import type { Lead } from '../../../boards/document/lead';
import type { Rating } from '../../../boards/document/rating';
import type { FindingCode } from '../../../boards/findings/finding';
import { singleRow } from '../../../boards/library/grids';
import { makeConnector } from '../../../boards/library/make-connector';
import { plug } from '../../../boards/library/plug-and-wires';
import { type Bench, bench } from './harness';

const panel = bench().header('panel-2x5', 'panel');
const supplied = bench().header('panel-2x5-supply', 'panel');
const usb = bench().header('usb2-2x5', 'usb');
const usbAndFirewire = usb.header('ieee1394-2x5', 'f1394');
const fan = bench().header('fan-1x4', 'fan');
const clear = panel.header('clear-settings-1x3', 'clear');
const power = panel.lead('power-switch-1x2', 'power');
const powerAndReset = power.lead('reset-switch-1x2', 'reset');
const audio = bench().header('ac97-audio-2x5', 'ac97').header('hd-audio-2x5', 'hd');
const singles = usb
  .lead('usb2-singles', 'reader')
  .seat('reader', 'usb', '1', { plug: 'first-vbus' })
  .seat('reader', 'usb', '7', { plug: 'first-ground' });
const wide: Partial<Lead> = {
  wires: [
    { from: 'led.anode', to: 'plug.1', colour: 'red' },
    { from: 'led.cathode', to: 'plug.4', colour: 'white' },
  ],
};

/** The CPU cable with a supply's plug at either end. */
function loopedCpu(lead: Lead): Lead {
  if (lead.id !== 'ash-cpu') return lead;
  return { ...lead, plugs: lead.plugs.map((each) => ({ ...each, family: 'supply-side' })) };
}

const ash = bench().unit('supply-modular-ash', 'ash');
const birch = bench().unit('supply-modular-birch', 'birch');
const plain = bench().unit('supply-fixed', 'psu');
/** Two hubs, a cable from each to the other. */
const hubs = bench()
  .unit('fan-hub-header', 'one')
  .unit('fan-hub-header', 'two')
  .lead('fan-splitter', 'there')
  .lead('fan-splitter', 'back')
  .seat('there', 'one-fan-1', '1', { plug: 'board' })
  .seat('there', 'two-fan-1', '1', { plug: 'first' })
  .seat('back', 'two-fan-2', '1', { plug: 'board' })
  .seat('back', 'one-fan-2', '1', { plug: 'first' });
/** A fan header whose manual was read. */
function rated(rating: Rating): Bench {
  return bench().connector({
    ...makeConnector('fan-1x4', { id: 'fan', print: 'FAN', place: CORNER }),
    rating,
  });
}
const CORNER = { xMm: 20, yMm: 20, turn: 0 } as const;
const strong: Partial<Lead> = {
  parts: [{ id: 'fan', kind: 'fan', fan: { runningAmps: 1.2, startAmps: 2.2, cools: 'case' } }],
};

/** A build for each code in which it is found. */
export const EXAMPLES: Readonly<Record<FindingCode, Bench>> = {
  'seat-impossible': powerAndReset.seat('power', 'panel', '6').seat('reset', 'panel', '6'),
  'contact-off-pins': power.seat('power', 'panel', '9', { turn: 270 }),
  overhang: bench().header('fan-1x3', 'fan').lead('fan-1x4', 'cooler').seat('cooler', 'fan', '1'),
  // Hole B of a microATX board, 0.4 in from the rear and 8.25 in from the right, is none of an ATX board.
  'standoff-short': bench().tray('atx', { id: 'b', name: 'B', xMm: 10.16, yMm: 209.55 }),
  // Hole C of every size: 0.4 in and 6.45 in.
  'standoff-beside-hole': bench().tray('atx', { id: 'c', name: 'C', xMm: 14.16, yMm: 163.83 }),
  'pin-unsure': supplied.lead('reset-switch-1x2', 'reset').seat('reset', 'panel', '7'),
  'usb-on-1394': usbAndFirewire.lead('usb2-block-2x5', 'front').seat('front', 'f1394', '1'),
  'ieee1394-on-usb': usbAndFirewire.lead('ieee1394-block-2x5', 'film').seat('film', 'usb', '1'),
  'panel-on-serial': bench()
    .header('serial-2x5-ribbon', 'com')
    .lead('panel-block-2x5', 'block')
    .seat('block', 'com', '1'),
  'hd-audio-on-ac97': audio.lead('hd-audio-block-2x5', 'jacks').seat('jacks', 'ac97', '1'),
  'ac97-on-hd-audio': audio.lead('ac97-audio-block-2x5', 'jacks').seat('jacks', 'hd', '1'),
  'supply-joined': supplied.lead('reset-switch-1x2', 'reset').seat('reset', 'panel', '7'),
  'led-across-supply': usb.lead('drive-led-1x4', 'led', wide).seat('led', 'usb', '1'),
  'supply-reversed': usb.lead('usb2-row-1x4', 'reader').seat('reader', 'usb', '7', { turn: 180 }),
  'supply-on-wire': usb.lead('usb2-row-1x4', 'reader').seat('reader', 'usb', [1, -1]),
  'fan-supply-on-signal': fan.lead('fan-1x3', 'rear').seat('rear', 'fan', '2'),
  'fan-overload': rated({ amps: 1 }).lead('fan-1x4', 'big', strong).seat('big', 'fan', '1'),
  'watched-header-silent': rated({ watched: true }),
  'fan-unpowered': fan.lead('fan-1x2', 'old').seat('old', 'fan', '3'),
  'ground-on-over-current': bench()
    .header('usb2-2x5', 'usb', { '10': { signal: 'usb-over-current' } })
    .lead('usb2-block-2x5-shield', 'front')
    .seat('front', 'usb', '1'),
  'pins-joined': usb
    .header('panel-2x5', 'panel')
    .lead('power-led-singles', 'link', {
      parts: [],
      plugs: [plug('one', 'ONE', singleRow(1)), plug('other', 'OTHER', singleRow(1))],
      wires: [{ from: 'one.1', to: 'other.1', colour: 'black' }],
    })
    .seat('link', 'usb', '1', { plug: 'one' })
    .seat('link', 'panel', '8', { plug: 'other' }),
  'input-held': panel.lead('speaker-1x2', 'beeper').seat('beeper', 'panel', '6'),
  'on-clear-settings': clear.lead('reset-switch-1x2', 'reset').seat('reset', 'clear', '2'),
  'led-always-lit': panel.lead('drive-led-1x4', 'drive', wide).seat('drive', 'panel', '2'),
  'led-depends': bench()
    .header('panel-2x5', 'panel', { '1': { values: [{ parameter: 'led-feed-ohms', value: 10_000 }] } })
    .lead('drive-led-1x2', 'drive')
    .seat('drive', 'panel', '1'),
  'standby-overload': bench()
    .header('usb3-19', 'usb3_1')
    .header('usb3-19', 'usb3_2')
    .lead('usb3-block', 'front')
    .lead('usb3-block', 'top')
    .seat('front', 'usb3_1', '1')
    .seat('top', 'usb3_2', '1'),
  'supply-mismatch': birch
    .unit('drive', 'disk')
    .with({ extras: [...birch.build.extras, ...ash.build.extras] })
    .seat('ash-sata', 'birch-drives-1', '1', { plug: 'supply' })
    .seat('ash-sata', 'disk-power', '1', { plug: 'first' }),
  'loose-end-mismatch': birch
    .with({ extras: ash.build.extras })
    .seat('ash-sata', 'birch-drives-1', '1', { plug: 'supply' }),
  'cpu-card-exchanged': bench()
    .header('cpu-power-2x4', 'cpu')
    .lead('card-power-cable-8', 'card')
    .seat('card', 'cpu', '1', { plug: 'board' }),
  'drive-plug-turned': plain
    .unit('drive-peripheral', 'disk')
    .seat('psu-drive', 'disk-power', '4', { plug: 'drive', turn: 180 }),
  'main-power-missing': plain.header('main-power-24', 'main'),
  'cpu-power-missing': plain.header('cpu-power-2x4', 'cpu'),
  'card-power-missing': plain
    .unit('card-two-sockets', 'card')
    .seat('psu-card', 'card-power-1', '1', { plug: 'first' }),
  'drive-power-missing': plain.unit('drive', 'disk'),
  'rail-left-off': plain
    .unit('drive', 'disk')
    .unit('sata-adapter', 'adapter')
    .seat('psu-drive', 'adapter-in', '1', { plug: 'drive' })
    .seat('adapter-tail', 'disk-power', '1', { plug: 'drive' }),
  'drive-held-off': plain
    .unit('drive-power-disable', 'disk')
    .seat('psu-sata', 'disk-power', '1', { plug: 'first' }),
  'hub-unfed': bench().unit('fan-hub-header', 'hub').lead('fan-1x4', 'rear').seat('rear', 'hub-fan-1', '1'),
  'adapter-may-burn': bench()
    .unit('drive', 'disk')
    .unit('sata-adapter', 'adapter')
    .seat('adapter-tail', 'disk-power', '1', { plug: 'drive' }),
  'cable-on-one-unit': ash
    .with({ extras: ash.build.extras.map(loopedCpu) })
    .seat('ash-cpu', 'ash-power-1', '1', { plug: 'supply' })
    .seat('ash-cpu', 'ash-power-2', '1', { plug: 'board' }),
  'feed-ring': hubs,
  'outlets-unknown': bench().with({
    units: [{ id: 'psu', name: 'PSU', kind: 'supply', connectors: [] }],
  }),
  'switches-exchanged': powerAndReset.seat('power', 'panel', '5').seat('reset', 'panel', '6'),
  'places-exchanged': panel
    .lead('power-led-1x2', 'led')
    .lead('drive-led-1x2', 'drive')
    .seat('led', 'panel', '1')
    .seat('drive', 'panel', '2'),
  shifted: panel.lead('drive-led-1x2', 'drive').seat('drive', 'panel', '3'),
  reversed: panel.lead('power-led-1x2', 'led').seat('led', 'panel', '4', { turn: 180 }),
  'pair-split': power.seat('power', 'panel', '2', { turn: 90 }),
  'ports-mixed': singles
    .seat('reader', 'usb', '4', { plug: 'first-d-minus' })
    .seat('reader', 'usb', '5', { plug: 'first-d-plus' }),
  'wrong-pins': singles
    .seat('reader', 'usb', '5', { plug: 'first-d-minus' })
    .seat('reader', 'usb', '3', { plug: 'first-d-plus' }),
  'wrong-function': powerAndReset.seat('reset', 'panel', '6'),
  'plug-too-wide': panel.lead('power-led-1x3', 'led'),
  'required-lead-missing': power,
  'lead-left-over': panel.lead('reset-switch-1x2', 'reset'),
  'place-taken': usb.lead('usb2-block-2x5', 'front').lead('usb2-block-2x5', 'side').seat('front', 'usb', '1'),
  'no-place': usb.lead('power-led-key-lock-1x5', 'lock'),
};
