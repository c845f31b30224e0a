import type { Plug } from '../../document/lead';
import { singleRow, zigZag } from '../grids';
import { type LeadType, leadType } from '../lead-type';
import { plug, wires } from '../plug-and-wires';

const COLOURS = 'wire colours: Front Panel I/O Connectivity Design Guide v1.3 (2005), 4.4.2';
const BLOCK = `order of two board product guides; ${COLOURS}`;
const SHIELD = `ground wire on hole 10: a case maker in an owners’ thread; ${COLOURS}`;
const ROWS = `single rows: common practice, no source; ${COLOURS}`;

const TWO_PORTS = [
  { id: 'first', kind: 'usb2-port', channel: 'A', name: 'first USB port' },
  { id: 'second', kind: 'usb2-port', channel: 'B', name: 'second USB port' },
] as const;

function portWires(part: string, [vbus, minus, plus, ground]: readonly [number, number, number, number]) {
  return wires(part, 'plug', [
    ['vbus', vbus, 'red'],
    ['d-minus', minus, 'white'],
    ['d-plus', plus, 'green'],
    ['ground', ground, 'black'],
  ]);
}

const BLOCK_WIRES = [...portWires('first', [1, 3, 5, 7]), ...portWires('second', [2, 4, 6, 8])];

/** The four wires of a port in single plugs, their ids beginning with the port's. */
function singles(port: string, digit: string): { plugs: Plug[]; wires: ReturnType<typeof wires> } {
  const single = (id: string, print: string) => plug(`${port}-${id}`, `${print}${digit}`, singleRow(1));
  return {
    plugs: [single('vbus', 'VCC'), single('d-minus', 'D−'), single('d-plus', 'D+'), single('ground', 'GND')],
    wires: [
      ...wires(port, `${port}-vbus`, [['vbus', 1, 'red']]),
      ...wires(port, `${port}-d-minus`, [['d-minus', 1, 'white']]),
      ...wires(port, `${port}-d-plus`, [['d-plus', 1, 'green']]),
      ...wires(port, `${port}-ground`, [['ground', 1, 'black']]),
    ],
  };
}

const FIRST = singles('first', '1');
const SECOND = singles('second', '2');

export const USB2_LEADS: readonly LeadType[] = [
  leadType('usb2-block-2x5', 'two USB 2.0 ports, hole 9 blocked', BLOCK, {
    parts: [...TWO_PORTS],
    plugs: [plug('plug', 'USB', zigZag(5), { blocked: ['9'], mark: '1' })],
    wires: BLOCK_WIRES,
  }),
  leadType('usb2-block-2x5-shield', 'two USB 2.0 ports, hole 9 blocked, shield on hole 10', SHIELD, {
    parts: [...TWO_PORTS],
    plugs: [plug('plug', 'USB', zigZag(5), { blocked: ['9'], mark: '1' })],
    wires: [...BLOCK_WIRES, ...wires('first', 'plug', [['shield', 10, 'black']])],
    notes: 'On a board with an over-current input on pin 10 the shield wire has to come out.',
  }),
  leadType('usb2-row-1x4', 'one USB 2.0 port, single row', ROWS, {
    parts: [{ id: 'port', kind: 'usb2-port' }],
    plugs: [plug('plug', 'USB', singleRow(4), { mark: '1' })],
    wires: portWires('port', [1, 2, 3, 4]),
    notes: 'Nothing keeps it from being turned end for end: +5 V would meet ground.',
  }),
  leadType('usb2-row-1x5', 'one USB 2.0 port, single row of five', ROWS, {
    parts: [{ id: 'port', kind: 'usb2-port' }],
    plugs: [plug('plug', 'USB', singleRow(5), { mark: '1' })],
    wires: [...portWires('port', [1, 2, 3, 4]), ...wires('port', 'plug', [['shield', 5, 'black']])],
  }),
  leadType('usb2-singles', 'one USB 2.0 port, single plugs', ROWS, {
    parts: [{ id: 'first', kind: 'usb2-port' }],
    ...FIRST,
  }),
  leadType('usb2-singles-two-ports', 'two USB 2.0 ports, single plugs', ROWS, {
    parts: [
      { id: 'first', kind: 'usb2-port', name: 'first USB port' },
      { id: 'second', kind: 'usb2-port', name: 'second USB port' },
    ],
    plugs: [...FIRST.plugs, ...SECOND.plugs],
    wires: [...FIRST.wires, ...SECOND.wires],
  }),
];
