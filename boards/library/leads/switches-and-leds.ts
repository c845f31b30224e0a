import { singleRow } from '../grids';
import { type LeadType, leadType } from '../lead-type';
import { plug, wires } from '../plug-and-wires';

const TRADE = 'common practice, no source';
const OLD_BOARDS = 'power LED and key lock header, from a tutorial on older boards';

const TWO_WIDE = singleRow(2);

/** Coloured wire to +, white to −: usual, not a standard. The moulded triangle stands at hole 1. */
export const SWITCH_AND_LED_LEADS: readonly LeadType[] = [
  leadType('power-switch-1x2', 'power switch', TRADE, {
    parts: [{ id: 'switch', kind: 'power-switch' }],
    plugs: [plug('plug', 'POWER SW', TWO_WIDE)],
    wires: wires('switch', 'plug', [
      ['a', 1, 'green'],
      ['b', 2, 'white'],
    ]),
  }),
  leadType('electronic-power-switch-1x2', 'power switch behind a circuit', TRADE, {
    parts: [{ id: 'switch', kind: 'electronic-power-switch' }],
    plugs: [plug('plug', 'POWER SW', TWO_WIDE, { mark: '1' })],
    wires: wires('switch', 'plug', [
      ['a', 1, 'red'],
      ['b', 2, 'black'],
    ]),
  }),
  leadType('reset-switch-1x2', 'reset switch', TRADE, {
    parts: [{ id: 'switch', kind: 'reset-switch' }],
    plugs: [plug('plug', 'RESET SW', TWO_WIDE)],
    wires: wires('switch', 'plug', [
      ['a', 1, 'blue'],
      ['b', 2, 'white'],
    ]),
  }),
  leadType('drive-led-1x2', 'drive LED', TRADE, {
    parts: [{ id: 'led', kind: 'drive-led' }],
    plugs: [plug('plug', 'DRIVE LED', TWO_WIDE, { mark: '1' })],
    wires: wires('led', 'plug', [
      ['anode', 1, 'red'],
      ['cathode', 2, 'white'],
    ]),
  }),
  leadType('drive-led-1x4', 'drive LED, four wide', OLD_BOARDS, {
    parts: [{ id: 'led', kind: 'drive-led' }],
    plugs: [plug('plug', 'DRIVE LED', singleRow(4), { mark: '1' })],
    wires: wires('led', 'plug', [
      ['anode', 1, 'red'],
      ['cathode', 2, 'white'],
    ]),
    notes: 'Two of the four contacts are in use; which two differs from case to case.',
  }),
  leadType('power-led-1x2', 'power LED', TRADE, {
    parts: [{ id: 'led', kind: 'power-led' }],
    plugs: [plug('plug', 'POWER LED', TWO_WIDE, { mark: '1' })],
    wires: wires('led', 'plug', [
      ['anode', 1, 'green'],
      ['cathode', 2, 'white'],
    ]),
  }),
  leadType('power-led-1x3', 'power LED, three wide with an empty middle', OLD_BOARDS, {
    parts: [{ id: 'led', kind: 'power-led' }],
    plugs: [plug('plug', 'POWER LED', singleRow(3), { mark: '1' })],
    wires: wires('led', 'plug', [
      ['anode', 1, 'green'],
      ['cathode', 3, 'white'],
    ]),
    notes: 'For two neighbouring pins: move the contact from hole 3 to hole 2, or cut the plug apart.',
  }),
  leadType('power-led-singles', 'power LED, two single plugs', TRADE, {
    parts: [{ id: 'led', kind: 'power-led' }],
    plugs: [plug('plus', 'P LED+', singleRow(1), { mark: '1' }), plug('minus', 'P LED−', singleRow(1))],
    wires: [
      ...wires('led', 'plus', [['anode', 1, 'green']]),
      ...wires('led', 'minus', [['cathode', 1, 'white']]),
    ],
  }),
  leadType('two-colour-power-led-1x2', 'two-colour power LED', TRADE, {
    parts: [{ id: 'led', kind: 'two-colour-power-led' }],
    plugs: [plug('plug', 'POWER LED', TWO_WIDE)],
    wires: wires('led', 'plug', [
      ['first', 1, 'green'],
      ['second', 2, 'yellow'],
    ]),
  }),
  leadType('message-led-1x2', 'message LED', TRADE, {
    parts: [{ id: 'led', kind: 'message-led' }],
    plugs: [plug('plug', 'MSG LED', TWO_WIDE, { mark: '1' })],
    wires: wires('led', 'plug', [
      ['anode', 1, 'yellow'],
      ['cathode', 2, 'white'],
    ]),
  }),
  leadType('power-led-key-lock-1x5', 'power LED and key lock', OLD_BOARDS, {
    parts: [
      { id: 'led', kind: 'power-led' },
      { id: 'lock', kind: 'key-lock' },
    ],
    plugs: [plug('plug', 'PLED KEYLOCK', singleRow(5), { mark: '1' })],
    wires: [
      ...wires('led', 'plug', [
        ['anode', 1, 'green'],
        ['cathode', 3, 'white'],
      ]),
      ...wires('lock', 'plug', [
        ['a', 4, 'blue'],
        ['b', 5, 'black'],
      ]),
    ],
  }),
];
