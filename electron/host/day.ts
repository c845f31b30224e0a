/**
 * The day it is where the person is, as the start of that day by the world's clock. SOURCE_DATE_EPOCH
 * names another one, for files that have to be the same every time (reproducible-builds.org).
 */
export function dayFrom(now: Date, env: Readonly<Record<string, string | undefined>>): Date {
  const seconds = /^\d{1,11}$/.test(env.SOURCE_DATE_EPOCH ?? '') ? Number(env.SOURCE_DATE_EPOCH) : null;
  if (seconds !== null) {
    const named = new Date(seconds * 1_000);
    return new Date(Date.UTC(named.getUTCFullYear(), named.getUTCMonth(), named.getUTCDate()));
  }
  return new Date(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()));
}
