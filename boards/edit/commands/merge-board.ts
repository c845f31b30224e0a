import { z } from 'zod';
import { refuse } from '../../base/result';
import { BoardSheetZ } from '../../document/board-sheet';
import { referenceProblems } from '../../document/check/references';
import { ChoicesZ, takeOf } from '../compare/choices';
import { compareBoards } from '../compare/compare-boards';
import { mergeBoards } from '../compare/merge-boards';
import { defineCommand } from '../definition';
import { reseat } from '../reseat';
import { soundBuild } from '../sound';

/**
 * Takes over from another sheet of the board what was chosen of their differences, in one step. Plugs stay
 * where they still fit and come off where they do not.
 */
export const mergeBoard = defineCommand({
  name: 'merge-board',
  args: z.strictObject({ board: BoardSheetZ, choices: ChoicesZ }),
  label: (_, { board }) => `Take over from the board sheet ${board.name}`,
  apply: (build, { board, choices }) => {
    const unsound = referenceProblems(board);
    if (unsound.fields.length > 0) return refuse({ code: 'invalid', ...unsound });
    const merged = mergeBoards(compareBoards(build.board, board), takeOf(choices));
    if (!merged.ok) return merged;
    const bare = soundBuild({ ...build, board: merged.value, seats: [] });
    return bare.ok ? reseat(bare.value, build.seats) : bare;
  },
});
