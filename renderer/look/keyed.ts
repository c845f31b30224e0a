/**
 * Each of some things that are told by a text, with a key of its own. Two may read the same, because people give two
 * things one name; React would then leave one of them standing when it is gone.
 */
export function keyed<T>(
  items: readonly T[],
  textOf: (item: T) => string = String,
): readonly (readonly [key: string, item: T])[] {
  const times = new Map<string, number>();
  return items.map((item) => {
    const text = textOf(item);
    const time = (times.get(text) ?? 0) + 1;
    times.set(text, time);
    return [`${text}\n${time}`, item];
  });
}
