/** Whether two pieces of plain data say the same. Shared parts are passed over, so it is quick between two steps. */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const others = new Map(Object.entries(b));
  const entries = Object.entries(a);
  return (
    entries.length === others.size &&
    entries.every(([key, value]) => others.has(key) && same(value, others.get(key)))
  );
}
