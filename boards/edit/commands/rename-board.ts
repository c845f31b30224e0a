import { z } from 'zod';
import { ok } from '../../base/result';
import { NameZ } from '../../document/text';
import { defineCommand } from '../definition';

/** Gives the board of the build another name. */
export const renameBoard = defineCommand({
  name: 'rename-board',
  args: z.strictObject({ name: NameZ }),
  label: () => 'Rename the board',
  apply: (build, { name }) => ok({ ...build, board: { ...build.board, name } }),
});
