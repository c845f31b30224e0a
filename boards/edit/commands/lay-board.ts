import { z } from 'zod';
import { ok } from '../../base/result';
import { TrayZ } from '../../document/tray';
import { defineCommand } from '../definition';
import { changeTray } from '../tray';

/**
 * Says where on the tray the corner lies that all boards share, and to which side their rear edge looks;
 * null where nobody has measured that.
 */
export const layBoard = defineCommand({
  name: 'lay-board',
  args: z.strictObject({ board: TrayZ.shape.board.unwrap().nullable() }),
  label: ({ case: { tray } }, { board }) => {
    if (board === null) return 'Forget where the board goes';
    const before = tray?.board;
    if (before === undefined) return 'Say where the board goes';
    return before.rear === board.rear ? 'Move the place of the board' : 'Turn the place of the board';
  },
  apply: (build, { board }) =>
    changeTray(build, ({ board: _, ...tray }) => ok(board === null ? tray : { ...tray, board })),
});
