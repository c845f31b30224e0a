import { readFileSync } from 'node:fs';
import { uptime } from 'node:os';
import { z } from 'zod';

/** One run of a program: its number, and where the system tells it, when it began. Numbers are used again. */
export const LifeZ = z.strictObject({ pid: z.int().positive(), started: z.string().nullable() });
export type Life = z.infer<typeof LifeZ>;

/** The run that we are. */
export function ownLife(): Life {
  return { pid: process.pid, started: startOf(process.pid) };
}

/** The clock may be set right after the start, and runs a little faster or slower than what counts from there. */
const CLOCK_SLACK_MS = 60_000;

/**
 * Whether that run still goes on. Where the system does not tell when it began, a run that was last seen before the
 * system itself started has ended, whoever has its number now.
 */
export function isAlive(life: Life, seenMs: number): boolean {
  if (!isRunning(life.pid)) return false;
  if (life.started !== null) return startOf(life.pid) === life.started;
  return seenMs >= Date.now() - uptime() * 1_000 - CLOCK_SLACK_MS;
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (thrown) {
    // Somebody else's process: it runs, and we may not signal it.
    return thrown instanceof Error && 'code' in thrown && thrown.code === 'EPERM';
  }
}

/** Clock ticks from the start of the machine to that of the process; only Linux tells without another program. */
function startOf(pid: number): string | null {
  try {
    const line = readFileSync(`/proc/${pid}/stat`, 'utf8');
    // The second field is the program's name in brackets and may hold anything; start time is the 22nd.
    return (
      line
        .slice(line.lastIndexOf(')') + 2)
        .split(' ')
        .at(19) ?? null
    );
  } catch {
    return null;
  }
}
