import { z } from 'zod';
import { DayZ, RemarkZ } from '../../document/text';
import { defineCommand } from '../definition';
import { withLine } from '../log-lines';

/** Writes a remark into the log of a machine that does not start. */
export const noteRemark = defineCommand({
  name: 'note-remark',
  args: z.strictObject({ text: RemarkZ, day: DayZ.optional() }),
  label: () => 'Write a remark',
  apply: (build, { text, day }) => withLine(build, { kind: 'remark', text, ...(day && { day }) }),
});
