import { readFileSync } from 'node:fs';
import { z } from 'zod';

/** One run of a program: its number, and where the system tells it, when it began. Numbers are used again. */
export const LifeZ = z.strictObject({ pid: z.int().positive(), started: z.string().nullable() });
export type Life = z.infer<typeof LifeZ>;

/** The run that we are. */
export function ownLife(): Life {
  return { pid: process.pid, started: startOf(process.pid) };
}

/** Whether that run still goes on. */
export function isAlive(life: Life): boolean {
  if (!isRunning(life.pid)) return false;
  return life.started === null || startOf(life.pid) === life.started;
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
