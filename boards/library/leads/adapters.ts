import type { WireColour } from '../../document/lead';
import { singleRow, zigZag } from '../grids';
import { type LeadType, leadType } from '../lead-type';
import { plug } from '../plug-and-wires';

const FAN = 'wires of a four-wire fan; one branch alone gives its speed back: common practice, no source';
const PANEL = 'straight through, hole 10 blocked: common practice, no source';

const RIB = { rib: 'bottom' } as const;
const PANEL_HOLES = [1, 2, 3, 4, 5, 6, 7, 8, 9];

function branch(id: string, holes: readonly (readonly [number, WireColour])[]) {
  return holes.map(([hole, colour]) => ({ from: `board.${hole}`, to: `${id}.${hole}`, colour }));
}

/** Blocks that lie between the board and other leads. */
export const ADAPTER_LEADS: readonly LeadType[] = [
  leadType('fan-splitter', 'one fan header for two fans', FAN, {
    parts: [],
    plugs: [
      plug('board', '', singleRow(4), RIB),
      plug('first', '1', singleRow(4), RIB),
      plug('second', '2', singleRow(4), RIB),
    ],
    wires: [
      ...branch('first', [
        [1, 'black'],
        [2, 'yellow'],
        [3, 'green'],
        [4, 'blue'],
      ]),
      ...branch('second', [
        [1, 'black'],
        [2, 'yellow'],
        [4, 'blue'],
      ]),
    ],
    notes: 'Branch 2 has no wire in hole 3: two speed signals on one wire would jump about.',
  }),
  leadType('panel-extension-2x5', 'panel header brought to another place', PANEL, {
    parts: [],
    plugs: [
      plug('board', '', zigZag(5), { blocked: ['10'], mark: '1' }),
      plug('far', '', zigZag(5), { blocked: ['10'], mark: '1' }),
    ],
    wires: PANEL_HOLES.map((hole) => ({ from: `board.${hole}`, to: `far.${hole}`, colour: 'grey' })),
  }),
];
