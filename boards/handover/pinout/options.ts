import { z } from 'zod';
import { PAPER_IDS } from '../page/paper';

const TurnZ = z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]);

/** How a board's pinout is printed. */
export const PinoutOptionsZ = z.strictObject({
  paper: z.enum(PAPER_IDS),
  turn: TurnZ,
  mirrored: z.boolean(),
  /** Ids of the connectors to print; null for all of them. */
  connectors: z.array(z.string().max(64)).min(1).max(2_000).nullable(),
});

export type PinoutOptions = z.infer<typeof PinoutOptionsZ>;

export const PLAIN_OPTIONS: PinoutOptions = { paper: 'a4', turn: 0, mirrored: false, connectors: null };
