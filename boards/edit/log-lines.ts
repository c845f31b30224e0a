import { ok, type Result, refuse } from '../base/result';
import type { Build } from '../document/build';
import { LIMITS } from '../document/limits';
import { type LogEntry, logOf } from '../document/trouble';
import type { Refusal } from './refusal';

/** A build with another log; without a line it has none. */
export function withLog(build: Build, log: readonly LogEntry[]): Build {
  const { trouble: _, ...plain } = build;
  return log.length === 0 ? plain : { ...plain, trouble: { log: [...log] } };
}

/** A build with one more line at the end of its log. Refuses where the log is full. */
export function withLine(build: Build, line: LogEntry): Result<Build, Refusal> {
  const log = logOf(build);
  if (log.length >= LIMITS.logEntries)
    return refuse({ code: 'full', what: 'lines', limit: LIMITS.logEntries });
  return ok(withLog(build, [...log, line]));
}
