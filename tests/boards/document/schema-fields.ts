import { z } from 'zod';

type Schema = z.core.$ZodType;

/**
 * Every field that a schema has, as in "pins[].source.kind"; of a union, once for each option that has it:
 * "readings[](ohms).tolerance". What stands in several places (a connector of the board, and of a unit)
 * counts once, by the first of them.
 */
export function fieldsOf(schema: Schema): readonly string[] {
  return [...placesIn(schema)].flatMap(([object, path]) =>
    Object.keys(object.shape).map((key) => joined(path, key)),
  );
}

/** The fields that a value really has, by the same names. */
export function fieldsIn(schema: Schema, value: unknown): readonly string[] {
  const places = placesIn(schema);
  const found: string[] = [];
  const look = (at: Schema, held: unknown): void => {
    if (held === undefined || held === null) return;
    if (at instanceof z.ZodOptional || at instanceof z.ZodNullable) look(at.unwrap(), held);
    else if (at instanceof z.ZodArray && Array.isArray(held)) for (const each of held) look(at.element, each);
    else if (at instanceof z.ZodObject) {
      for (const [key, inner] of Object.entries(at.shape)) {
        const under: unknown = Reflect.get(Object(held), key);
        if (under !== undefined) found.push(joined(places.get(at) ?? '?', key));
        look(inner, under);
      }
    } else if (at instanceof z.ZodDiscriminatedUnion) {
      const option = at.options.find((each) => z.safeParse(each, held).success);
      if (option !== undefined) look(option, held);
    }
  };
  look(schema, value);
  return found;
}

/** Every object that a schema is made of, and where it stands first. */
function placesIn(schema: Schema): ReadonlyMap<z.ZodObject, string> {
  const places = new Map<z.ZodObject, string>();
  const look = (at: Schema, path: string): void => {
    if (at instanceof z.ZodOptional || at instanceof z.ZodNullable) look(at.unwrap(), path);
    else if (at instanceof z.ZodArray) look(at.element, `${path}[]`);
    else if (at instanceof z.ZodDiscriminatedUnion)
      for (const option of at.options) look(option, path + tagOf(option, at));
    else if (at instanceof z.ZodObject && !places.has(at)) {
      places.set(at, path);
      for (const [key, inner] of Object.entries(at.shape)) look(inner, joined(path, key));
    }
  };
  look(schema, '');
  return places;
}

function joined(path: string, key: string): string {
  return path === '' ? key : `${path}.${key}`;
}

/** Every word that a schema lets stand in a field: "view.turn: 90". */
export function wordsOf(schema: Schema, path = ''): readonly string[] {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable)
    return wordsOf(schema.unwrap(), path);
  if (schema instanceof z.ZodArray) return wordsOf(schema.element, `${path}[]`);
  if (schema instanceof z.ZodObject)
    return Object.entries(schema.shape).flatMap(([key, inner]) =>
      wordsOf(inner, path === '' ? key : `${path}.${key}`),
    );
  if (schema instanceof z.ZodEnum) return schema.options.map((word) => `${path}: ${word}`);
  if (schema instanceof z.ZodLiteral) return [...schema.values].map((word) => `${path}: ${word}`);
  if (schema instanceof z.ZodDiscriminatedUnion)
    return schema.options.flatMap((option) => wordsOf(option, path + tagOf(option, schema)));
  if (schema instanceof z.ZodUnion) return schema.options.flatMap((option) => wordsOf(option, path));
  return [];
}

function tagOf(option: Schema, union: z.ZodDiscriminatedUnion): string {
  const tag = option instanceof z.ZodObject ? option.shape[union.def.discriminator] : undefined;
  if (tag instanceof z.ZodLiteral) return `(${[...tag.values].join()})`;
  return tag instanceof z.ZodEnum ? `(${tag.options.join()})` : '';
}
