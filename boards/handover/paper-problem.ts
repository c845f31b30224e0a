import { z } from 'zod';

/** Why nothing can be printed. Closed; words in paper-problem-words.ts. */
export const PaperProblemZ = z.discriminatedUnion('code', [
  z.strictObject({
    code: z.literal('no-such-connector'),
    id: z.string(),
    /** The id that was probably meant. */
    nearest: z.string().optional(),
  }),
  z.strictObject({ code: z.literal('no-such-page'), page: z.number(), pages: z.number() }),
  z.strictObject({ code: z.literal('too-many-pages'), pages: z.number(), limit: z.number() }),
  z.strictObject({
    code: z.literal('too-many-pixels'),
    widthPx: z.number(),
    heightPx: z.number(),
    limitPx: z.number(),
  }),
  /** The person did not want to wait for it. */
  z.strictObject({ code: z.literal('stopped') }),
  z.strictObject({ code: z.literal('not-a-board'), path: z.string(), expected: z.string() }),
]);

export type PaperProblem = z.infer<typeof PaperProblemZ>;
