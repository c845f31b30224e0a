import { zigZag } from '../grids';
import { type LeadType, leadType } from '../lead-type';
import { plug, wires } from '../plug-and-wires';

const FIREWIRE = 'order of a board product guide; colours are common practice';
const SERIAL = 'ribbon order of a single-board computer’s manual; red edge at hole 1 is common practice';

export const SERIAL_AND_1394_LEADS: readonly LeadType[] = [
  leadType('ieee1394-block-2x5', '1394 port, hole 9 blocked', FIREWIRE, {
    parts: [{ id: 'port', kind: 'ieee1394-port' }],
    plugs: [plug('plug', '1394', zigZag(5), { blocked: ['9'], mark: '1' })],
    wires: wires('port', 'plug', [
      ['tpa-plus', 1, 'red'],
      ['tpa-minus', 2, 'green'],
      ['ground', 3, 'black'],
      ['ground', 4, 'black'],
      ['tpb-plus', 5, 'blue'],
      ['tpb-minus', 6, 'orange'],
      ['power', 7, 'white'],
      ['power', 8, 'white'],
      ['shield', 10, 'black'],
    ]),
  }),
  leadType('serial-block-2x5', 'serial port on a ribbon, hole 10 blocked', SERIAL, {
    parts: [{ id: 'port', kind: 'serial-port' }],
    plugs: [plug('plug', 'COM', zigZag(5), { blocked: ['10'], mark: '1' })],
    wires: wires('port', 'plug', [
      ['dcd', 1, 'red'],
      ['dsr', 2, 'grey'],
      ['rxd', 3, 'grey'],
      ['rts', 4, 'grey'],
      ['txd', 5, 'grey'],
      ['cts', 6, 'grey'],
      ['dtr', 7, 'grey'],
      ['ri', 8, 'grey'],
      ['ground', 9, 'grey'],
    ]),
  }),
];
