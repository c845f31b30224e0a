import { z } from 'zod';
import { nearestOf } from './nearest';
import { count, shownText } from './shown-value';

const LISTED = 12;

/** What a schema asks for, in words: "a whole number from 1 to 64". Offers the nearest word for one that is unknown. */
export function expectedWords(schema: z.core.$ZodType, found: unknown): string {
  const node = nodeOf(schema);
  const choices = choicesOf(schema);
  if (choices.length > 0) return choiceWords(choices, found);
  switch (node.type) {
    case 'integer':
      return withNote(`a whole number${rangeWords(node)}`, node.description);
    case 'number':
      return withNote(`a finite number${rangeWords(node)}`, node.description);
    case 'string':
      return node.description ?? `one line${lengthWords(node, 'plain characters')}`;
    case 'array':
      return `a list${lengthWords({ minLength: node.minItems, maxLength: node.maxItems }, 'entries')}`;
    case 'boolean':
      return 'true or false';
    default:
      return 'an object in braces';
  }
}

/** A schema turned into words costs more than to check a value by it, and a wrong file asks for many. */
const nodes = new WeakMap<z.core.$ZodType, z.core.JSONSchema.BaseSchema>();

function nodeOf(schema: z.core.$ZodType): z.core.JSONSchema.BaseSchema {
  const known = nodes.get(schema);
  if (known !== undefined) return known;
  const node = z.toJSONSchema(schema, { unrepresentable: 'any' });
  nodes.set(schema, node);
  return node;
}

function withNote(words: string, note: string | undefined): string {
  return note ? `${words} (${note})` : words;
}

/** Every fixed value that a schema allows; none where it is not a choice between fixed values. */
export function choicesOf(schema: z.core.$ZodType): readonly string[] {
  if (schema instanceof z.ZodEnum) return schema.options.map(String);
  if (schema instanceof z.ZodLiteral) return [...schema.values].map(String);
  if (schema instanceof z.ZodUnion) return schema.options.flatMap(choicesOf);
  return [];
}

/** "one of a, b, c", with the nearest where one was probably meant. */
export function choiceWords(choices: readonly string[], found: unknown): string {
  if (choices.length === 1) return choices.join();
  const nearest = typeof found === 'string' ? nearestOf(choices, found) : undefined;
  const meant = nearest === undefined ? '' : `; perhaps ${shownText(nearest)} is meant`;
  if (choices.length <= LISTED) return `one of ${choices.join(', ')}${meant}`;
  return `one of ${count(choices.length)} words: ${choices.slice(0, 3).join(', ')} and so on${meant}`;
}

function rangeWords(node: z.core.JSONSchema.BaseSchema): string {
  const { minimum, maximum, exclusiveMinimum } = node;
  if (typeof exclusiveMinimum === 'number' && maximum !== undefined)
    return ` above ${count(exclusiveMinimum)}, at most ${count(maximum)}`;
  return minimum !== undefined && maximum !== undefined ? ` from ${count(minimum)} to ${count(maximum)}` : '';
}

function lengthWords(
  { minLength = 0, maxLength }: { minLength?: number | undefined; maxLength?: number | undefined },
  unit: string,
): string {
  if (maxLength === undefined) return '';
  if (minLength === maxLength) return ` of ${count(maxLength)} ${unit}`;
  return minLength > 0
    ? ` of ${count(minLength)} to ${count(maxLength)} ${unit}`
    : ` of at most ${count(maxLength)} ${unit}`;
}
