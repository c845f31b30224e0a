import { z } from 'zod';
import { isRecord } from '../is-record';
import { choicesOf, choiceWords, expectedWords } from './expected-words';
import { nearestOf } from './nearest';
import { type FieldProblems, ProblemList } from './problem-list';
import { lengthLimits, spanOf } from './schema-span';
import { shownPath, shownText, shownValue } from './shown-value';

type Schema = z.core.$ZodType;

/** As many problems as zod may list at once: more of a value than this is gone through here instead. */
const ZOD_PROBLEMS = 10_000;

/**
 * Where a value is not as its schema says, with what was expected there. It goes down to the wrong places
 * itself and stops at a limit, because zod would list every one of a million bad entries. It knows the
 * kinds of schema that documents and commands are made of; anything else is told as a whole.
 */
export function fieldProblems(schema: Schema, value: unknown): FieldProblems {
  const search = new Search();
  search.look(schema, value);
  return search.list.problems;
}

class Search {
  readonly list = new ProblemList();
  readonly #path: (string | number)[] = [];

  look(schema: Schema, value: unknown): void {
    if (this.list.full) return;
    const small = spanOf(schema) <= ZOD_PROBLEMS;
    if (small && z.safeParse(schema, value).success) return;
    const before = this.list.length;
    this.#descend(schema, value);
    if (small && this.list.length === before) this.#report(expectedWords(schema, value), value);
  }

  #descend(schema: Schema, value: unknown): void {
    if (schema instanceof z.ZodOptional) {
      if (value !== undefined) this.#descend(schema.unwrap(), value);
    } else if (schema instanceof z.ZodNullable) {
      if (value !== null) this.#descend(schema.unwrap(), value);
    } else if (schema instanceof z.ZodDiscriminatedUnion && isRecord(value)) this.#union(schema, value);
    else if (schema instanceof z.ZodObject && isRecord(value)) this.#object(schema, value);
    else if (schema instanceof z.ZodArray && Array.isArray(value)) this.#array(schema, value);
    else if (schema instanceof z.ZodTuple && Array.isArray(value)) this.#tuple(schema, value);
    else this.#report(expectedWords(schema, value), value);
  }

  #inside(key: string | number, schema: Schema, value: unknown): void {
    this.#path.push(key);
    this.look(schema, value);
    this.#path.pop();
  }

  #object(schema: z.ZodObject, value: Record<string, unknown>): void {
    const { shape } = schema;
    for (const key of Object.keys(value)) {
      if (this.list.full) return;
      if (!Object.hasOwn(shape, key)) this.#unknownKey(key, Object.keys(shape));
    }
    for (const [key, inner] of Object.entries(shape))
      this.#inside(key, inner, Object.hasOwn(value, key) ? value[key] : undefined);
  }

  #unknownKey(key: string, known: readonly string[]): void {
    const nearest = nearestOf(known, key);
    const meant =
      nearest === undefined ? `only ${known.join(', ')}` : `perhaps ${shownText(nearest)} is meant`;
    this.#path.push(key);
    this.#report(`no such name here: ${meant}`, key);
    this.#path.pop();
  }

  #array(schema: z.ZodArray, value: readonly unknown[]): void {
    const { min, max } = lengthLimits(schema);
    if (value.length < min || value.length > max) {
      this.#report(expectedWords(schema, value), value);
      return;
    }
    for (const [at, item] of value.entries()) {
      if (this.list.full) return;
      this.#inside(at, schema.element, item);
    }
  }

  #tuple(schema: z.ZodTuple, value: readonly unknown[]): void {
    const { items } = schema.def;
    if (value.length !== items.length) this.#report(`a list of ${items.length} entries`, value);
    else for (const [at, item] of items.entries()) this.#inside(at, item, value[at]);
  }

  /** Looks on along the option that the value itself names. */
  #union(schema: z.ZodDiscriminatedUnion, value: Record<string, unknown>): void {
    const key = schema.def.discriminator;
    const found = Object.hasOwn(value, key) ? value[key] : undefined;
    const choices: string[] = [];
    for (const option of schema.options) {
      const tag = option instanceof z.ZodObject ? option.shape[key] : undefined;
      if (!(option instanceof z.ZodObject) || tag === undefined) continue;
      if (z.safeParse(tag, found).success) {
        this.#object(option, value);
        return;
      }
      choices.push(...choicesOf(tag));
    }
    this.#path.push(key);
    this.#report(choiceWords(choices, found), found);
    this.#path.pop();
  }

  #report(expected: string, found: unknown): void {
    const path = shownPath(this.#path);
    this.list.add(() => ({ path, expected, found: shownValue(found) }));
  }
}
