import { z } from 'zod';
import { BoardSheetZ } from '../../document/board-sheet';
import { defineCommand } from '../definition';
import { reseat } from '../reseat';
import { soundBuild } from '../sound';

/** Puts another board sheet into the build. Plugs stay where they still fit and come off where they do not. */
export const replaceBoard = defineCommand({
  name: 'replace-board',
  args: z.strictObject({ board: BoardSheetZ }),
  label: (_, { board }) => `Use the board ${board.name}`,
  apply: (build, { board }) => {
    const bare = soundBuild({ ...build, board, seats: [] });
    return bare.ok ? reseat(bare.value, build.seats) : bare;
  },
});
