import { connectorType, openHeader } from '../connector-type';
import { FAMILY } from '../families';
import { rowAfterRow, thereAndBack, zigZag } from '../grids';
import { keyAt, otherwise, pinsFrom } from '../pin-rows';
import { readAbout, readIn, recalled } from '../reading';
import { box } from '../shrouds';

const USB2 = readIn('manual', 'two board product guides: front-panel USB 2.0 header');
const OVER_CURRENT = readAbout('manual', 'over-current on pin 10: a case maker in an owners’ thread');
const USB3 = readAbout(
  'standard',
  'USB 3.0 Internal Connector and Cable Specification, as a board manual lists it',
);
const USB3_PITCH = 'pitch 2.00 mm and the slot: a pinout page (read in secondary)';
const TYPE_C = recalled('standard', 'USB Type-C front-panel implementation document rev 1.0 (2017)');

const usb2 = pinsFrom(USB2);
const usb3 = pinsFrom(USB3);
const typeC = pinsFrom(TYPE_C);

const A = { channel: 'A' };
const B = { channel: 'B' };
const GROUND_A = { ...A, belongsTo: 'usb2' } as const;
const GROUND_B = { ...B, belongsTo: 'usb2' } as const;

/** Odd pins are one port, even pins the other. */
const TWO_PORTS = [
  usb2(1, 'usb-vbus', '+5 V', A),
  usb2(2, 'usb-vbus', '+5 V', B),
  usb2(3, 'usb-d-minus', 'D−', A),
  usb2(4, 'usb-d-minus', 'D−', B),
  usb2(5, 'usb-d-plus', 'D+', A),
  usb2(6, 'usb-d-plus', 'D+', B),
  usb2(7, 'ground', 'GND', GROUND_A),
  usb2(8, 'ground', 'GND', GROUND_B),
  keyAt(9, USB2),
];

const ONE = { channel: '1' };
const TWO = { channel: '2' };
const GROUND_1 = { ...ONE, belongsTo: 'usb3' } as const;
const GROUND_2 = { ...TWO, belongsTo: 'usb3' } as const;

export const USB_CONNECTORS = [
  openHeader('usb2-2x5', {
    title: 'USB 2.0, two ports',
    grid: zigZag(5),
    pins: [
      ...TWO_PORTS,
      usb2(10, 'no-connection', 'NC', {
        belongsTo: 'usb2',
        alternatives: [otherwise('usb-over-current', OVER_CURRENT.source)],
      }),
    ],
  }),
  openHeader('usb2-2x5-over-current', {
    title: 'USB 2.0, two ports, over-current on pin 10',
    grid: zigZag(5),
    pins: [
      ...TWO_PORTS,
      pinsFrom(OVER_CURRENT)(10, 'usb-over-current', 'OC#', {
        alternatives: [otherwise('no-connection', USB2.source)],
      }),
    ],
    notes: 'A lead with a ground wire on pin 10 makes the board switch the ports off.',
  }),
  connectorType(
    'usb3-19',
    {
      title: 'USB 3, two ports',
      family: FAMILY.pinHeader,
      grid: thereAndBack(10),
      pins: [
        usb3(1, 'usb3-vbus', 'VBUS', ONE),
        usb3(2, 'usb3-ssrx-minus', 'SSRX1−', ONE),
        usb3(3, 'usb3-ssrx-plus', 'SSRX1+', ONE),
        usb3(4, 'ground', 'GND', GROUND_1),
        usb3(5, 'usb3-sstx-minus', 'SSTX1−', ONE),
        usb3(6, 'usb3-sstx-plus', 'SSTX1+', ONE),
        usb3(7, 'ground', 'GND', GROUND_1),
        usb3(8, 'usb3-d-minus', 'D1−', ONE),
        usb3(9, 'usb3-d-plus', 'D1+', ONE),
        usb3(10, 'no-connection', 'NC', {
          belongsTo: 'usb3',
          notes: 'Open in one manual, a drain or an identity line in others: leave it unwired.',
        }),
        usb3(11, 'usb3-d-plus', 'D2+', TWO),
        usb3(12, 'usb3-d-minus', 'D2−', TWO),
        usb3(13, 'ground', 'GND', GROUND_2),
        usb3(14, 'usb3-sstx-plus', 'SSTX2+', TWO),
        usb3(15, 'usb3-sstx-minus', 'SSTX2−', TWO),
        usb3(16, 'ground', 'GND', GROUND_2),
        usb3(17, 'usb3-ssrx-plus', 'SSRX2+', TWO),
        usb3(18, 'usb3-ssrx-minus', 'SSRX2−', TWO),
        usb3(19, 'usb3-vbus', 'VBUS', TWO),
        keyAt(20, USB3),
      ],
      shroud: box('bottom'),
    },
    [USB3_PITCH],
  ),
  connectorType('usb-c-front-20', {
    title: 'USB Type-C front panel',
    family: FAMILY.usbC,
    grid: rowAfterRow(10, 1),
    pins: [
      typeC(1, 'usbc-vbus', 'VBUS'),
      typeC(2, 'usbc-tx1-plus', 'TX1+'),
      typeC(3, 'usbc-tx1-minus', 'TX1−'),
      typeC(4, 'ground', 'GND', { belongsTo: 'usb-c' }),
      typeC(5, 'usbc-rx1-plus', 'RX1+'),
      typeC(6, 'usbc-rx1-minus', 'RX1−'),
      typeC(7, 'usbc-vbus', 'VBUS'),
      typeC(8, 'usbc-cc1', 'CC1'),
      typeC(9, 'usbc-sbu1', 'SBU1'),
      typeC(10, 'usbc-sbu2', 'SBU2'),
      typeC(11, 'usbc-vbus', 'VBUS'),
      typeC(12, 'usbc-tx2-plus', 'TX2+'),
      typeC(13, 'usbc-tx2-minus', 'TX2−'),
      typeC(14, 'ground', 'GND', { belongsTo: 'usb-c' }),
      typeC(15, 'usbc-rx2-plus', 'RX2+'),
      typeC(16, 'usbc-rx2-minus', 'RX2−'),
      typeC(17, 'ground', 'GND', { belongsTo: 'usb-c' }),
      typeC(18, 'usbc-d-minus', 'D−'),
      typeC(19, 'usbc-d-plus', 'D+'),
      typeC(20, 'usbc-cc2', 'CC2'),
    ],
    shroud: box('bottom'),
    notes: 'Order of the pins, spacing and the side of the latch are from memory.',
  }),
];
