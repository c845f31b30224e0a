import { z } from 'zod';
import { ok } from '../../base/result';
import { NotesZ } from '../../document/text';
import { defineCommand } from '../definition';

/** Writes the notes of the board sheet; an empty text takes them away. */
export const noteBoard = defineCommand({
  name: 'note-board',
  args: z.strictObject({ notes: NotesZ }),
  label: () => 'Write notes of the board',
  apply: (build, { notes }) => {
    const { notes: _, ...plain } = build.board;
    return ok({ ...build, board: notes === '' ? plain : { ...plain, notes } });
  },
});
