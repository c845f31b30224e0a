import { FAMILY } from '../families';
import { rowAfterRow, thereAndBack } from '../grids';
import { type LeadType, leadType } from '../lead-type';
import { plug, wires } from '../plug-and-wires';

const USB3 = 'order of a board manual; colours of the USB 3.0 cable (from memory)';
const TYPE_C = 'order and colours from memory';

export const USB3_AND_TYPE_C_LEADS: readonly LeadType[] = [
  leadType('usb3-block', 'two USB 3 ports, position 20 closed', USB3, {
    parts: [
      { id: 'first', kind: 'usb3-port', channel: '1', name: 'first USB 3 port' },
      { id: 'second', kind: 'usb3-port', channel: '2', name: 'second USB 3 port' },
    ],
    plugs: [plug('plug', 'USB 3', thereAndBack(10), { blocked: ['20'], rib: 'bottom' })],
    wires: [
      ...wires('first', 'plug', [
        ['vbus', 1, 'red'],
        ['ssrx-minus', 2, 'violet'],
        ['ssrx-plus', 3, 'orange'],
        ['ground', 4, 'black'],
        ['sstx-minus', 5, 'blue'],
        ['sstx-plus', 6, 'yellow'],
        ['drain', 7, 'grey'],
        ['d-minus', 8, 'white'],
        ['d-plus', 9, 'green'],
      ]),
      ...wires('second', 'plug', [
        ['d-plus', 11, 'green'],
        ['d-minus', 12, 'white'],
        ['drain', 13, 'grey'],
        ['sstx-plus', 14, 'yellow'],
        ['sstx-minus', 15, 'blue'],
        ['ground', 16, 'black'],
        ['ssrx-plus', 17, 'orange'],
        ['ssrx-minus', 18, 'violet'],
        ['vbus', 19, 'red'],
      ]),
    ],
  }),
  leadType('usb-c-front', 'USB Type-C port', TYPE_C, {
    parts: [{ id: 'port', kind: 'usb-c-port' }],
    plugs: [plug('plug', 'TYPE-C', rowAfterRow(10, 1), { family: FAMILY.usbC, rib: 'bottom' })],
    wires: wires('port', 'plug', [
      ['vbus', 1, 'red'],
      ['tx1-plus', 2, 'yellow'],
      ['tx1-minus', 3, 'blue'],
      ['ground', 4, 'black'],
      ['rx1-plus', 5, 'orange'],
      ['rx1-minus', 6, 'violet'],
      ['vbus', 7, 'red'],
      ['cc1', 8, 'brown'],
      ['sbu1', 9, 'grey'],
      ['sbu2', 10, 'grey'],
      ['vbus', 11, 'red'],
      ['tx2-plus', 12, 'yellow'],
      ['tx2-minus', 13, 'blue'],
      ['ground', 14, 'black'],
      ['rx2-plus', 15, 'orange'],
      ['rx2-minus', 16, 'violet'],
      ['ground', 17, 'black'],
      ['d-minus', 18, 'white'],
      ['d-plus', 19, 'green'],
      ['cc2', 20, 'brown'],
    ]),
  }),
];
