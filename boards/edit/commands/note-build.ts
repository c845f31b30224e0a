import { z } from 'zod';
import { ok } from '../../base/result';
import { NotesZ } from '../../document/text';
import { defineCommand } from '../definition';

/** Writes the notes of the build; an empty text takes them away. */
export const noteBuild = defineCommand({
  name: 'note-build',
  args: z.strictObject({ notes: NotesZ }),
  label: () => 'Write notes',
  apply: (build, { notes }) => {
    const { notes: _, ...plain } = build;
    return ok(notes === '' ? plain : { ...plain, notes });
  },
});
