import { FINE_PITCH, zigZag } from '../grids';
import { type LeadType, leadType } from '../lead-type';
import { plug, wires } from '../plug-and-wires';

const GUIDE =
  'order of the Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2; colours are common practice';
const INVENTED =
  'no standard: every maker of ready-made machines has an order of their own; this one is invented';

/** Several leads of the panel in one plug. */
export const PANEL_BLOCK_LEADS: readonly LeadType[] = [
  leadType('panel-block-2x5', 'panel block, hole 10 blocked', GUIDE, {
    parts: [
      { id: 'drive-led', kind: 'drive-led' },
      { id: 'power-led', kind: 'power-led' },
      { id: 'power', kind: 'power-switch' },
      { id: 'reset', kind: 'reset-switch' },
    ],
    plugs: [plug('plug', 'F PANEL', zigZag(5), { blocked: ['10'], mark: '1' })],
    wires: [
      ...wires('drive-led', 'plug', [
        ['anode', 1, 'red'],
        ['cathode', 3, 'white'],
      ]),
      ...wires('power-led', 'plug', [
        ['anode', 2, 'green'],
        ['cathode', 4, 'white'],
      ]),
      ...wires('power', 'plug', [
        ['a', 6, 'violet'],
        ['b', 8, 'white'],
      ]),
      ...wires('reset', 'plug', [
        ['a', 7, 'blue'],
        ['b', 5, 'white'],
      ]),
    ],
  }),
  leadType('maker-block-2x9-fine', 'panel block of a ready-made machine, two by nine, fine pitch', INVENTED, {
    parts: [
      { id: 'drive-led', kind: 'drive-led' },
      { id: 'power-led', kind: 'power-led' },
      { id: 'power', kind: 'power-switch' },
      { id: 'sensor', kind: 'sensor' },
      { id: 'lid', kind: 'case-open-switch' },
    ],
    plugs: [plug('plug', '', zigZag(9, FINE_PITCH), { blocked: ['14'] })],
    wires: [
      ...wires('drive-led', 'plug', [
        ['anode', 1, 'orange'],
        ['cathode', 3, 'grey'],
      ]),
      ...wires('power-led', 'plug', [
        ['anode', 1, 'green'],
        ['cathode', 5, 'grey'],
      ]),
      ...wires('power', 'plug', [
        ['a', 6, 'violet'],
        ['b', 8, 'black'],
      ]),
      ...wires('sensor', 'plug', [
        ['a', 10, 'brown'],
        ['b', 8, 'black'],
      ]),
      ...wires('lid', 'plug', [
        ['a', 18, 'blue'],
        ['b', 8, 'black'],
      ]),
    ],
    notes: 'The LEDs share their + on hole 1; switch, sensor and lid share a ground on hole 8.',
  }),
];
