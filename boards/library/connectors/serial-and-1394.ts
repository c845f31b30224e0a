import { openHeader } from '../connector-type';
import { zigZag } from '../grids';
import { keyAt, pinsFrom } from '../pin-rows';
import { readAbout, readIn, recalled } from '../reading';

const FIREWIRE = readIn('manual', 'a board product guide: IEEE 1394a header');
const RIBBON = readAbout('manual', 'a single-board computer’s manual: serial header in ribbon order');
const STRAIGHT = recalled('manual', 'serial header in the order of the 9-pin plug');

const firewire = pinsFrom(FIREWIRE);
const ribbon = pinsFrom(RIBBON);
const straight = pinsFrom(STRAIGHT);

const FIREWIRE_GROUND = { belongsTo: 'ieee1394' } as const;

export const SERIAL_AND_1394_CONNECTORS = [
  openHeader('ieee1394-2x5', {
    title: 'IEEE 1394',
    grid: zigZag(5),
    pins: [
      firewire(1, 'ieee1394-tpa-plus', 'TPA1+'),
      firewire(2, 'ieee1394-tpa-minus', 'TPA1−'),
      firewire(3, 'ground', 'GND', FIREWIRE_GROUND),
      firewire(4, 'ground', 'GND', FIREWIRE_GROUND),
      firewire(5, 'ieee1394-tpb-plus', 'TPA2+', { notes: 'The guide prints TPA2; the pair is TPB.' }),
      firewire(6, 'ieee1394-tpb-minus', 'TPA2−', { notes: 'The guide prints TPA2; the pair is TPB.' }),
      firewire(7, 'ieee1394-power', '+12 V'),
      firewire(8, 'ieee1394-power', '+12 V'),
      keyAt(9, FIREWIRE),
      firewire(10, 'ground', 'GND', FIREWIRE_GROUND),
    ],
    notes: 'Same outline and same key as USB 2.0, with +12 V where USB has ground.',
  }),
  openHeader('serial-2x5-ribbon', {
    title: 'serial port, ribbon order',
    grid: zigZag(5),
    pins: [
      ribbon(1, 'serial-dcd', 'DCD'),
      ribbon(2, 'serial-dsr', 'DSR'),
      ribbon(3, 'serial-rxd', 'RXD'),
      ribbon(4, 'serial-rts', 'RTS'),
      ribbon(5, 'serial-txd', 'TXD'),
      ribbon(6, 'serial-cts', 'CTS'),
      ribbon(7, 'serial-dtr', 'DTR'),
      ribbon(8, 'serial-ri', 'RI'),
      ribbon(9, 'ground', 'GND', { belongsTo: 'serial' }),
      keyAt(10, RIBBON),
    ],
    notes: 'Same outline and same key as the panel header.',
  }),
  openHeader('serial-2x5-straight', {
    title: 'serial port, order of the 9-pin plug',
    grid: zigZag(5),
    pins: [
      straight(1, 'serial-dcd', 'DCD'),
      straight(2, 'serial-rxd', 'RXD'),
      straight(3, 'serial-txd', 'TXD'),
      straight(4, 'serial-dtr', 'DTR'),
      straight(5, 'ground', 'GND', { belongsTo: 'serial' }),
      straight(6, 'serial-dsr', 'DSR'),
      straight(7, 'serial-rts', 'RTS'),
      straight(8, 'serial-cts', 'CTS'),
      straight(9, 'serial-ri', 'RI'),
      keyAt(10, STRAIGHT),
    ],
    notes: 'Same outline and same key as the panel header.',
  }),
];
