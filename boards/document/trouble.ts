import { z } from 'zod';
import { LIMITS } from './limits';
import { CodeZ, DayZ, RemarkZ } from './text';

const day = DayZ.optional();

/** One line of what was noticed and tried on a machine that does not start, as it is written down. */
const LogEntryZ = z.discriminatedUnion('kind', [
  /** A question about the machine, answered. One that a later version no longer asks does no harm. */
  z.strictObject({ kind: z.literal('noticed'), what: CodeZ, answer: z.enum(['yes', 'no']), day }),
  /** What came of a trial. One that the machine no longer has does no harm. */
  z.strictObject({ kind: z.literal('tried'), trial: CodeZ, result: CodeZ, day }),
  z.strictObject({ kind: z.literal('remark'), text: RemarkZ, day }),
  /** What stands before it is kept, and counts no more. */
  z.strictObject({ kind: z.literal('started-over'), day }),
]);

/** Everything that is written down about a machine that does not start. */
export const TroubleZ = z.strictObject({ log: z.array(LogEntryZ).max(LIMITS.logEntries) });

type Trouble = z.infer<typeof TroubleZ>;
export type LogEntry = z.infer<typeof LogEntryZ>;

export function logOf({ trouble }: { readonly trouble?: Trouble | undefined }): readonly LogEntry[] {
  return trouble?.log ?? [];
}

/** The place of the first entry that counts: after the last time that it was started over. */
export function countsFrom(log: readonly LogEntry[]): number {
  return log.findLastIndex(({ kind }) => kind === 'started-over') + 1;
}
