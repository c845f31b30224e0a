/** What several pins say alike; not the same for all where they differ. */
export type Shared<T> = { readonly same: true; readonly value: T } | { readonly same: false };

/** The value that all items have, or that they have not the same. */
export function sharedOf<Item, T>(items: readonly Item[], read: (item: Item) => T): Shared<T> {
  const values = new Set(items.map(read));
  const [value] = values;
  return values.size === 1 && value !== undefined ? { same: true, value } : { same: false };
}
