type Kept<V> = WeakMap<object, Kept<V>> & { value?: { readonly of: V } };

/**
 * Works out a value once for the same objects, and lets go of it with them. For immutable objects only:
 * identity then stands for content.
 *
 * @param keysOf the parts of the input that the value depends on, when it is not the whole of it
 */
export function byIdentity<Input extends object, V>(
  make: (input: Input) => V,
  keysOf: (input: Input) => readonly object[] = (input) => [input],
): (input: Input) => V {
  const root: Kept<V> = new WeakMap();
  return (input) => {
    let place = root;
    for (const key of keysOf(input)) {
      let next = place.get(key);
      if (next === undefined) {
        next = new WeakMap();
        place.set(key, next);
      }
      place = next;
    }
    place.value ??= { of: make(input) };
    return place.value.of;
  };
}
