/** Freezes plain data all the way down, without recursion: a document may be wide but never deeper than the limit. */
export function freezeDeep<T>(value: T): T {
  const waiting: unknown[] = [value];
  while (waiting.length > 0) {
    const item = waiting.pop();
    if (typeof item !== 'object' || item === null || Object.isFrozen(item)) continue;
    Object.freeze(item);
    for (const inner of Object.values(item)) waiting.push(inner);
  }
  return value;
}
