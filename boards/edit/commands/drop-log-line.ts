import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { logOf } from '../../document/trouble';
import { defineCommand } from '../definition';
import { withLog } from '../log-lines';

/** Takes one line out of the log, counted from 0. Refuses one that is not there. */
export const dropLogLine = defineCommand({
  name: 'drop-log-line',
  args: z.strictObject({
    line: z
      .int()
      .min(0)
      .max(LIMITS.logEntries - 1),
  }),
  label: (_, { line }) => `Take line\u00a0${line + 1} out of the log`,
  apply: (build, { line }) => {
    const log = logOf(build);
    if (log[line] === undefined) return refuse({ code: 'unknown-line', line });
    return ok(
      withLog(
        build,
        log.filter((_, at) => at !== line),
      ),
    );
  },
});
