type Kept<V> = WeakMap<object, Kept<V>> & { value?: { readonly of: V } };

/**
 * Works out a value once for each run of the same objects, and lets go of it with them. For immutable
 * objects only: identity then stands for content.
 */
export function byIdentity<Keys extends readonly object[], V>(
  make: (...keys: Keys) => V,
): (...keys: Keys) => V {
  const root: Kept<V> = new WeakMap();
  return (...keys) => {
    let place = root;
    for (const key of keys) {
      let next = place.get(key);
      if (next === undefined) {
        next = new WeakMap();
        place.set(key, next);
      }
      place = next;
    }
    place.value ??= { of: make(...keys) };
    return place.value.of;
  };
}
