import { singleRow } from '../grids';
import { type LeadType, leadType } from '../lead-type';
import { plug, wires } from '../plug-and-wires';

const TRADE = 'common practice, no source';

export const JUMPER_LEADS: readonly LeadType[] = [
  leadType('case-open-1x2', 'case-open switch', TRADE, {
    parts: [{ id: 'switch', kind: 'case-open-switch' }],
    plugs: [plug('plug', 'INTRUDER', singleRow(2))],
    wires: wires('switch', 'plug', [
      ['a', 1, 'grey'],
      ['b', 2, 'black'],
    ]),
  }),
  leadType('case-open-1x3', 'case-open switch, three wide', TRADE, {
    parts: [{ id: 'switch', kind: 'case-open-switch' }],
    plugs: [plug('plug', 'INTRUDER', singleRow(3))],
    wires: wires('switch', 'plug', [
      ['a', 1, 'grey'],
      ['b', 2, 'black'],
    ]),
    notes: 'Hole 3 is empty.',
  }),
  leadType('jumper-cap-1x2', 'jumper cap', TRADE, {
    parts: [{ id: 'cap', kind: 'jumper-cap' }],
    plugs: [plug('plug', '', singleRow(2))],
    wires: wires('cap', 'plug', [
      ['a', 1, 'black'],
      ['b', 2, 'black'],
    ]),
  }),
];
