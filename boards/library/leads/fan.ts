import { FAMILY } from '../families';
import { PERIPHERAL_PITCH, singleRow } from '../grids';
import { type LeadType, leadType } from '../lead-type';
import { plug, wires } from '../plug-and-wires';

const FOUR_WIRE = '4-Wire PWM Controlled Fans Specification rev 1.3 (2005), Table 1, as quoted by owners';
const THREE_WIRE = 'three-wire fans: order and colours from memory';
const DRIVE_PLUG = 'fan on a drive plug: common practice, no source';

/** The rib faces the ramp of the header. */
const RIB = { rib: 'bottom' } as const;

export const FAN_LEADS: readonly LeadType[] = [
  leadType('fan-1x4', 'fan with four wires', FOUR_WIRE, {
    parts: [{ id: 'fan', kind: 'fan' }],
    plugs: [plug('plug', 'FAN', singleRow(4), RIB)],
    wires: wires('fan', 'plug', [
      ['ground', 1, 'black'],
      ['supply', 2, 'yellow'],
      ['tach', 3, 'green'],
      ['pwm', 4, 'blue'],
    ]),
  }),
  leadType('fan-1x3', 'fan with three wires', THREE_WIRE, {
    parts: [{ id: 'fan', kind: 'fan' }],
    plugs: [plug('plug', 'FAN', singleRow(3), RIB)],
    wires: wires('fan', 'plug', [
      ['ground', 1, 'black'],
      ['supply', 2, 'red'],
      ['tach', 3, 'yellow'],
    ]),
  }),
  leadType('fan-1x2', 'fan with two wires', THREE_WIRE, {
    parts: [{ id: 'fan', kind: 'fan' }],
    plugs: [plug('plug', 'FAN', singleRow(2), RIB)],
    wires: wires('fan', 'plug', [
      ['ground', 1, 'black'],
      ['supply', 2, 'red'],
    ]),
    notes: 'It tells no speed: a board that watches this header takes the fan for stopped.',
  }),
  leadType('fan-on-drive-plug', 'fan on a drive plug, passed through', DRIVE_PLUG, {
    parts: [{ id: 'fan', kind: 'fan' }],
    plugs: [
      plug('in', '', singleRow(4, PERIPHERAL_PITCH), { family: FAMILY.peripheralPower, rib: 'top' }),
      plug('through', '', singleRow(4, PERIPHERAL_PITCH), { family: FAMILY.peripheralPower, rib: 'top' }),
    ],
    wires: [
      ...wires('fan', 'in', [
        ['supply', 1, 'red'],
        ['ground', 2, 'black'],
      ]),
      { from: 'in.1', to: 'through.1', colour: 'yellow' },
      { from: 'in.2', to: 'through.2', colour: 'black' },
      { from: 'in.3', to: 'through.3', colour: 'black' },
      { from: 'in.4', to: 'through.4', colour: 'red' },
    ],
  }),
];
