import { constants } from 'node:os';

/** Numbers that Node's file library knows no name for, among them that of a used-up quota. */
const NAMES: ReadonlyMap<number, string> = new Map(
  Object.entries(constants.errno).map(([name, number]) => [number, name]),
);

/** The system's own name for what went wrong ("ENOSPC"), or null where it is no system failure but a bug. */
export function errnoOf(thrown: unknown): string | null {
  if (!(thrown instanceof Error) || !('code' in thrown)) return null;
  if (typeof thrown.code === 'string' && /^E[A-Z0-9]+$/.test(thrown.code)) return thrown.code;
  if (!('errno' in thrown) || typeof thrown.errno !== 'number' || !('syscall' in thrown)) return null;
  return NAMES.get(Math.abs(thrown.errno)) ?? `E${Math.abs(thrown.errno)}`;
}

/** What the work gives, or null where the system says that there is no such file. Other failures go on. */
export async function orNullIfMissing<T>(work: Promise<T>): Promise<T | null> {
  try {
    return await work;
  } catch (thrown) {
    if (errnoOf(thrown) === 'ENOENT') return null;
    throw thrown;
  }
}
