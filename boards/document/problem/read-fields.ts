import { z } from 'zod';
import { ok, type Result, refuse } from '../../base/result';
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
 * A value as its schema reads it, names in the schema's order; or where it is not as the schema says, with what
 * was expected there. It goes through large values itself and stops at a limit, because zod would list every
 * one of a million bad entries. It knows the kinds of schema that documents and commands are made of; anything
 * else is told as a whole.
 */
export function readFields<S extends Schema>(schema: S, value: unknown): Result<z.output<S>, FieldProblems> {
  const search = new Search();
  const read = search.read(schema, value);
  // Put together from what zod itself gave for its parts.
  return search.list.length === 0 ? ok(read as z.output<S>) : refuse(search.list.problems);
}

/** Each step gives what it read, which counts for something only where nothing was wrong anywhere. */
class Search {
  readonly list = new ProblemList();
  readonly #path: (string | number)[] = [];

  read(schema: Schema, value: unknown): unknown {
    if (this.list.full) return undefined;
    const small = spanOf(schema) <= ZOD_PROBLEMS;
    if (small) {
      const parsed = z.safeParse(schema, value);
      if (parsed.success) return parsed.data;
    }
    const before = this.list.length;
    const read = this.#descend(schema, value);
    if (small && this.list.length === before) this.#report(expectedWords(schema, value), value);
    return read;
  }

  #descend(schema: Schema, value: unknown): unknown {
    if (schema instanceof z.ZodOptional && value === undefined) return undefined;
    if (schema instanceof z.ZodNullable && value === null) return null;
    if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable)
      return this.#descend(schema.unwrap(), value);
    if (schema instanceof z.ZodDiscriminatedUnion && isRecord(value)) return this.#union(schema, value);
    if (schema instanceof z.ZodObject && isRecord(value)) return this.#object(schema, value);
    if (schema instanceof z.ZodArray && Array.isArray(value)) return this.#array(schema, value);
    if (schema instanceof z.ZodTuple && Array.isArray(value)) return this.#tuple(schema, value);
    return this.#report(expectedWords(schema, value), value);
  }

  #inside(key: string | number, schema: Schema, value: unknown): unknown {
    this.#path.push(key);
    const read = this.read(schema, value);
    this.#path.pop();
    return read;
  }

  #object(schema: z.ZodObject, value: Record<string, unknown>): unknown {
    const { shape } = schema;
    for (const key of Object.keys(value)) {
      if (this.list.full) return undefined;
      if (!Object.hasOwn(shape, key)) this.#unknownKey(key, Object.keys(shape));
    }
    const read: Record<string, unknown> = {};
    for (const [key, inner] of Object.entries(shape)) {
      const there = Object.hasOwn(value, key);
      const item = this.#inside(key, inner, there ? value[key] : undefined);
      if (there) read[key] = item;
    }
    return read;
  }

  #unknownKey(key: string, known: readonly string[]): void {
    const nearest = nearestOf(known, key);
    const meant =
      nearest === undefined ? `only ${known.join(', ')}` : `perhaps ${shownText(nearest)} is meant`;
    this.#path.push(key);
    this.#report(`no such name here: ${meant}`, key);
    this.#path.pop();
  }

  #array(schema: z.ZodArray, value: readonly unknown[]): unknown {
    const { min, max } = lengthLimits(schema);
    if (value.length < min || value.length > max) return this.#report(expectedWords(schema, value), value);
    const read: unknown[] = [];
    for (const [at, item] of value.entries()) {
      if (this.list.full) break;
      read.push(this.#inside(at, schema.element, item));
    }
    return read;
  }

  #tuple(schema: z.ZodTuple, value: readonly unknown[]): unknown {
    const { items } = schema.def;
    if (value.length !== items.length) return this.#report(`a list of ${items.length} entries`, value);
    return items.map((item, at) => this.#inside(at, item, value[at]));
  }

  /** Looks on along the option that the value itself names. */
  #union(schema: z.ZodDiscriminatedUnion, value: Record<string, unknown>): unknown {
    const key = schema.def.discriminator;
    const found = Object.hasOwn(value, key) ? value[key] : undefined;
    const choices: string[] = [];
    for (const option of schema.options) {
      const tag = option instanceof z.ZodObject ? option.shape[key] : undefined;
      if (!(option instanceof z.ZodObject) || tag === undefined) continue;
      if (z.safeParse(tag, found).success) return this.#object(option, value);
      choices.push(...choicesOf(tag));
    }
    this.#path.push(key);
    this.#report(choiceWords(choices, found), found);
    this.#path.pop();
    return undefined;
  }

  #report(expected: string, found: unknown): undefined {
    const path = shownPath(this.#path);
    this.list.add(() => ({ path, expected, found: shownValue(found) }));
  }
}
