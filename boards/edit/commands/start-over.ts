import { z } from 'zod';
import { ok } from '../../base/result';
import { DayZ } from '../../document/text';
import { countsFrom, logOf } from '../../document/trouble';
import { defineCommand } from '../definition';
import { withLine } from '../log-lines';

/** Begins anew: what is in the log is kept, and counts no more. Nothing to begin anew with is no change. */
export const startOver = defineCommand({
  name: 'start-over',
  args: z.strictObject({ day: DayZ.optional() }),
  label: () => 'Start over, keeping the log',
  apply: (build, { day }) => {
    const log = logOf(build);
    return countsFrom(log) === log.length
      ? ok(build)
      : withLine(build, { kind: 'started-over', ...(day && { day }) });
  },
});
