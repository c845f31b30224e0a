import { z } from 'zod';
import { LIMITS } from '../../document/limits';
import { TAKES, type TakeOf } from './taking';

const TakeZ = z.enum(TAKES);

/** What is taken of each row of a comparison: of a few rows by their keys, and of all the others. */
export const ChoicesZ = z.strictObject({
  others: TakeZ,
  rows: z.array(z.strictObject({ key: z.string().max(200), take: TakeZ })).max(LIMITS.pins),
});

export type Choices = z.infer<typeof ChoicesZ>;

/** The choices as something that can be asked. */
export function takeOf({ others, rows }: Choices): TakeOf {
  const chosen = new Map(rows.map(({ key, take }) => [key, take]));
  return (key) => chosen.get(key) ?? others;
}
