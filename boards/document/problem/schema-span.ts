import { z } from 'zod';

type Schema = z.core.$ZodType;

/** How long a list may be by its schema. */
export function lengthLimits(schema: z.ZodArray): { readonly min: number; readonly max: number } {
  let min = 0;
  let max = Number.POSITIVE_INFINITY;
  for (const check of schema.def.checks ?? []) {
    if (check instanceof z.core.$ZodCheckMinLength) min = Math.max(min, check._zod.def.minimum);
    if (check instanceof z.core.$ZodCheckMaxLength) max = Math.min(max, check._zod.def.maximum);
  }
  return { min, max };
}

const spans = new WeakMap<Schema, number>();

/** How many single values a schema lets in at most, and so how many problems zod might list. */
export function spanOf(schema: Schema): number {
  const known = spans.get(schema);
  if (known !== undefined) return known;
  const span = measure(schema);
  spans.set(schema, span);
  return span;
}

function measure(schema: Schema): number {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable) return spanOf(schema.unwrap());
  if (schema instanceof z.ZodArray) return 1 + lengthLimits(schema).max * spanOf(schema.element);
  const parts = partsOf(schema);
  return parts.reduce((sum, part) => sum + spanOf(part), 1);
}

function partsOf(schema: Schema): readonly Schema[] {
  if (schema instanceof z.ZodObject) return Object.values(schema.shape);
  if (schema instanceof z.ZodTuple) return schema.def.items;
  return schema instanceof z.ZodUnion ? schema.options : [];
}
