import { z } from 'zod';
import { CodeZ, DayZ } from '../../document/text';
import { defineCommand } from '../definition';
import { withLine } from '../log-lines';

/**
 * Notes what came of a trial. Which trials there are depends on the wiring, and is no matter of the build: a line
 * that no trial answers to does no harm. Of a trial made twice the last result counts.
 */
export const noteTrial = defineCommand({
  name: 'note-trial',
  args: z.strictObject({ trial: CodeZ, result: CodeZ, day: DayZ.optional() }),
  label: () => 'Note the result of a trial',
  apply: (build, { trial, result, day }) =>
    withLine(build, { kind: 'tried', trial, result, ...(day && { day }) }),
});
