/** An object that all code shares, and what it holds by each of its own names. */
type Held = ReadonlyMap<PropertyKey, PropertyDescriptor>;
export type Shared = ReadonlyMap<
  object,
  { readonly name: string; readonly above: object | null; held: Held }
>;

const isObject = (value: unknown): value is object =>
  (typeof value === 'object' && value !== null) || typeof value === 'function';

/**
 * The language's own objects as they are now: every constructor that stands on the global object, its prototype, and
 * what stands above them. Getters are noted and not called.
 */
export function sharedNow(): Shared {
  const named: [string, unknown][] = [];
  for (const [name, { value }] of heldBy(globalThis))
    if (isObject(value) && typeof name === 'string' && /^[A-Z]/.test(name))
      named.push([name, value], [`${name}.prototype`, heldBy(value).get('prototype')?.value]);
  const shared = new Map<object, { name: string; above: object | null; held: Held }>();
  // What is above one of them is appended, and so is gone through too.
  for (const [name, object] of named) {
    if (!isObject(object) || shared.has(object)) continue;
    const above: object | null = Object.getPrototypeOf(object);
    shared.set(object, { name, above, held: heldBy(object) });
    named.push([`what is above ${name}`, above]);
  }
  return shared;
}

function heldBy(object: object): Held {
  return new Map(Reflect.ownKeys(object).map((key) => [key, descriptorOf(object, key)]));
}

function descriptorOf(object: object, key: PropertyKey): PropertyDescriptor {
  return Object.getOwnPropertyDescriptor(object, key) ?? {};
}

const PARTS = ['value', 'get', 'set', 'writable', 'enumerable', 'configurable'] as const;

/** What is no longer as it was, by name: "Object.prototype.polluted". */
export function changesSince(before: Shared): readonly string[] {
  return [...before].flatMap(([object, { name, above, held }]) => {
    const now = heldBy(object);
    const names = [...new Set([...held.keys(), ...now.keys()])].filter((key) => {
      const [was, is] = [held.get(key), now.get(key)];
      return was === undefined || is === undefined || PARTS.some((part) => !Object.is(was[part], is[part]));
    });
    return [
      ...names.map((key) => `${name}.${String(key)}`),
      ...(Object.getPrototypeOf(object) === above ? [] : [`what is above ${name}`]),
    ];
  });
}
