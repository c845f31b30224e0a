import type { Way } from './fault';

/** Makes ways that come to the same the same object, so that what is derived from them is found again. */
export function alikeWays(): (ways: readonly Way[]) => readonly Way[] {
  const known = new Map<string, readonly Way[]>();
  return (ways) => {
    const key = JSON.stringify(ways);
    const before = known.get(key) ?? ways;
    known.set(key, before);
    return before;
  };
}
