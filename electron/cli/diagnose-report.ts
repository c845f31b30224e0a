import { z } from 'zod';
import { RISKS } from '../../boards/diagnosis/trials/held-back';

/**
 * What `leadwright diagnose --json` prints. Within version 1 fields may be added, none removed or changed in
 * meaning.
 */
const ChanceZ = z.number().min(0).max(1);

export const DiagnoseReportZ = z.strictObject({
  format: z.literal('leadwright/diagnose-report'),
  version: z.literal(1),
  /** Null where no file was named and a typical build stands in. */
  file: z.string().nullable(),
  /** Of the build. */
  name: z.string(),
  /** Ids of observations, whatever names were given. */
  observed: z.array(z.string()),
  notObserved: z.array(z.string()),
  /** Said to be seen and not to be seen. */
  contradicted: z.array(z.string()),
  /** Both said to be seen, and no machine shows both. */
  excluding: z.array(z.tuple([z.string(), z.string()])),
  /** What to do instead of any trial; empty where nothing that was seen forbids one. */
  stop: z.array(z.string()),
  /** The likeliest first; their chances, that of all doubles and that of none of these add up to 1. */
  suspects: z.array(
    z.strictObject({
      cause: z.string(),
      chance: ChanceZ,
      words: z.string(),
      /** The likeliest first, with the lead of the build that it is about. */
      faults: z.array(
        z.strictObject({ id: z.string(), chance: ChanceZ, words: z.string(), lead: z.string().optional() }),
      ),
    }),
  ),
  /** The likeliest of two faults at once; empty where one alone explains it. */
  doubles: z.array(
    z.strictObject({
      causes: z.array(z.string()),
      chance: ChanceZ,
      words: z.string(),
      faults: z.array(z.strictObject({ id: z.string(), words: z.string() })),
    }),
  ),
  /** Of all two at once together, those that are not listed too. */
  allDoubles: ChanceZ,
  noneOfThese: ChanceZ,
  /** Whether none of these is the likeliest of all. */
  noneLikeliest: z.boolean(),
  /** What to look, listen or read for before anything is touched, the most telling first. */
  look: z.array(
    z.strictObject({
      observation: z.string(),
      words: z.string(),
      /** What a yes looks like. */
      sign: z.string(),
      gainBits: z.number(),
    }),
  ),
  /** The best first. */
  next: z.array(
    z.strictObject({
      trial: z.string(),
      words: z.string(),
      steps: z.array(z.string()),
      /** What to mind at it. */
      cautions: z.array(z.string()),
      /** What it is expected to tell of the faults, in bits, and its work in minutes. */
      gainBits: z.number(),
      effort: z.number(),
      /** Whether mains is on during it. */
      powered: z.boolean(),
      results: z.array(z.strictObject({ result: z.string(), chance: ChanceZ, words: z.string() })),
    }),
  ),
  /** Why nothing is started now, or only what puts right what was found; absent where any trial may be made. */
  heldBack: z.strictObject({ risk: z.enum(RISKS), words: z.string() }).optional(),
  /** How often each cause is met before anything was noticed, the most often first, and where that comes from. */
  priors: z.strictObject({
    source: z.string(),
    /** With the factor where the build or the command line weighs a cause in its own way. */
    causes: z.array(z.strictObject({ cause: z.string(), share: ChanceZ, factor: z.number().optional() })),
  }),
  /** Where the trouble was away at the last start: what that proves, and what not. */
  worksNow: z.strictObject({ proves: z.string(), provesNot: z.string() }).optional(),
});

export type DiagnoseReport = z.infer<typeof DiagnoseReportZ>;
