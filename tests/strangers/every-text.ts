import { z } from 'zod';

type Schema = z.core.$ZodType;

/** What a field takes that is there for people's own words, and no other field does. */
const OWN_WORDS = 'a <b> & “c” = (d)';

/**
 * The same data with a text in every field that a person may fill with words of their own. Fields that come
 * later have their own schemas: they are found by what those let in.
 *
 * @param textFor given the place of each field, from 0
 */
export function withEveryText<T>(schema: Schema, value: T, textFor: (place: number) => string): T {
  let place = 0;
  const look = (at: Schema, held: unknown): unknown => {
    if (held === undefined || held === null) return held;
    if (at instanceof z.ZodOptional || at instanceof z.ZodNullable) return look(at.unwrap(), held);
    if (at instanceof z.ZodArray && Array.isArray(held)) return held.map((each) => look(at.element, each));
    if (at instanceof z.ZodObject)
      return Object.fromEntries(
        Object.entries(Object(held)).map(([key, inner]) => [key, look(at.shape[key] ?? at, inner)]),
      );
    if (at instanceof z.ZodDiscriminatedUnion) {
      const option = at.options.find((each) => z.safeParse(each, held).success);
      return option ? look(option, held) : held;
    }
    if (at instanceof z.ZodString && z.safeParse(at, OWN_WORDS).success) return textFor(place++);
    return held;
  };
  return look(schema, value) as T;
}
