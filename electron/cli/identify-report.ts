import { z } from 'zod';
import { SIGNAL_IDS } from '../../boards/signals/signals';

/**
 * What `leadwright identify --json` prints. Within version 1 fields may be added, none removed or changed in
 * meaning.
 */
const SignalZ = z.enum(SIGNAL_IDS);
const ChanceZ = z.number().min(0).max(1);

/** A reading that could be taken, without its answer; pins in the order that counts. */
const QuestionZ = z.strictObject({
  kind: z.enum(['ohms', 'volts', 'continuity', 'touch', 'lamp']),
  pins: z.array(z.string()).min(1).max(2),
  state: z.enum(['unplugged', 'standby', 'running']),
});

const NextZ = z.strictObject({
  ...QuestionZ.shape,
  /** What it is expected to tell, in bits, and its work beside one ohm reading on an unplugged board. */
  gainBits: z.number(),
  effort: z.number(),
  /** What to do, in words: the state of the machine first. */
  words: z.array(z.string()),
  /** What each outcome would say of the pins. */
  outcomes: z.array(
    z.strictObject({
      chance: ChanceZ,
      words: z.string(),
      pins: z.array(
        z.strictObject({
          pin: z.string(),
          signals: z.array(z.strictObject({ signal: SignalZ, chance: ChanceZ })),
        }),
      ),
    }),
  ),
});

const ToldZ = z.strictObject({
  outcome: z.literal('told'),
  connector: z.string(),
  print: z.string(),
  readings: z.int(),
  verdict: z.enum(['no-readings', 'open', 'identified', 'two-remain', 'several-remain', 'none-of-these']),
  words: z.string(),
  /** Whole layouts, most probable first. */
  layouts: z.array(
    z.strictObject({
      chance: ChanceZ,
      words: z.string(),
      pins: z.array(z.strictObject({ pin: z.string(), signal: SignalZ })),
    }),
  ),
  noneOfThese: ChanceZ,
  pins: z.array(
    z.strictObject({
      pin: z.string(),
      /** Whether the first of its chances is above 99 %. */
      certain: z.boolean(),
      /** Most probable first; `alike` are signals that no reading tells from it. */
      chances: z.array(z.strictObject({ signal: SignalZ, chance: ChanceZ, alike: z.array(SignalZ) })),
    }),
  ),
  /** The two most probable layouts: where they differ, and the reading that tells them apart best. */
  remaining: z
    .strictObject({ pins: z.array(z.string()), reading: NextZ.omit({ outcomes: true }).optional() })
    .optional(),
  next: NextZ.optional(),
  contradictions: z.array(
    z.strictObject({
      why: z.enum(['one-pin', 'two-pins', 'no-such-reading', 'no-pin-there']),
      /** Places in the list of readings, from 0. */
      readings: z.array(z.int()),
      pins: z.array(z.string()),
      words: z.string(),
    }),
  ),
  /** Smallest sets of readings that would have to be wrong for the rest to agree. */
  suspects: z.array(z.array(z.int())),
});

const RefusedConnectorZ = z.strictObject({
  outcome: z.literal('refused'),
  connector: z.string(),
  print: z.string(),
  code: z.enum(['no-pins', 'too-many-pins']),
  words: z.string(),
});

export const IdentifyReportZ = z.strictObject({
  format: z.literal('leadwright/identify-report'),
  version: z.literal(1),
  file: z.string(),
  /** Of the board. */
  name: z.string(),
  /** Those with readings, or those that were named, in the order of the sheet. */
  connectors: z.array(z.discriminatedUnion('outcome', [ToldZ, RefusedConnectorZ])),
});

export type IdentifyReport = z.infer<typeof IdentifyReportZ>;
export type ConnectorReport = IdentifyReport['connectors'][number];
