/** The system's own name for what went wrong ("ENOSPC"), or null where it is no system failure but a bug. */
export function errnoOf(thrown: unknown): string | null {
  if (!(thrown instanceof Error) || !('code' in thrown)) return null;
  return typeof thrown.code === 'string' && /^E[A-Z0-9]+$/.test(thrown.code) ? thrown.code : null;
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
