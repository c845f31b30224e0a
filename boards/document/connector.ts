import { z } from 'zod';
import { PARAMETER_IDS } from '../signals/parameters';
import { JOBS } from '../signals/signal';
import { SIGNAL_IDS } from '../signals/signals';
import { WAKE_SUPPLIES } from '../signals/stub-of';
import { GridZ } from './grid';
import { LIMITS } from './limits';
import { PinReadingZ } from './pin-reading';
import { RatingZ } from './rating';
import { IdZ, LabelZ, LineZ, NotesZ, shaped } from './text';

export const SOURCE_KINDS = ['standard', 'manual', 'print', 'measured', 'guessed'] as const;

/** Where a statement about a pin was read. */
const SourceZ = z.strictObject({
  kind: z.enum(SOURCE_KINDS),
  where: LineZ.optional().describe('document and page, or what was measured'),
});

const SignalIdZ = z.enum(SIGNAL_IDS);
export const ChannelZ = shaped(/^[A-Z0-9]{1,4}$/, 'a port: up to four capital letters or digits');
const ConfidenceZ = z.number().min(0).max(1);

/** What another source says of a pin. One that says no pin stands there says "no-connection" and "missing". */
const AlternativeZ = z.strictObject({
  signal: SignalIdZ,
  missing: z.literal(true).optional(),
  channel: ChannelZ.optional(),
  name: LineZ.optional(),
  source: SourceZ,
  confidence: ConfidenceZ.optional(),
});

export const PinZ = z.strictObject({
  pin: LabelZ,
  /** No pin stands here: the key, or a gap. */
  missing: z.literal(true).optional(),
  signal: SignalIdZ.optional(),
  /** Which of several like ports the pin belongs to. */
  channel: ChannelZ.optional(),
  /** The job that a ground or an unused pin is there for, where the manual says so. */
  belongsTo: z.enum(JOBS).optional(),
  /** What is printed beside it on the board. */
  print: LineZ.optional(),
  /** As the manual calls it; the print too, in sheets that do not tell the two apart. */
  name: LineZ.optional(),
  source: SourceZ.optional(),
  confidence: ConfidenceZ.optional(),
  /** What was measured or read about the circuit behind it; takes the place of the usual range. */
  values: z
    .array(z.strictObject({ parameter: z.enum(PARAMETER_IDS), value: z.number() }))
    .max(LIMITS.valuesPerPin)
    .optional(),
  /** Which 5 V a jumper on the board lays on the supply pin of a socket; standby where nothing is said. */
  wakeSupply: z.enum(WAKE_SUPPLIES).optional(),
  /** What other sources say of the same pin; both are kept. */
  alternatives: z.array(AlternativeZ).max(LIMITS.alternativesPerPin).optional(),
  notes: NotesZ.optional(),
});

export const SIDES = ['top', 'right', 'bottom', 'left'] as const;

/** Walls round the pins. Sides are those of the unturned connector, seen from above. */
export const ShroudZ = z.strictObject({
  walls: z.array(z.enum(SIDES)).max(4),
  /** The side with the slot or the ramp: a plug's rib has to face it. */
  guide: z.enum(SIDES).optional(),
});

/** Which plugs enter: open posts take any plug of their pitch, other families only their own. */
export const FamilyZ = IdZ.describe('"pin-header" for open posts; otherwise the name of the shell shape');

export const PlaceZ = z.strictObject({
  xMm: z.number().min(-1_000).max(1_000),
  yMm: z.number().min(-1_000).max(1_000),
  turn: z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]),
});

export const ConnectorZ = z.strictObject({
  id: IdZ,
  /** The name printed beside it on the board. */
  print: LineZ,
  /** What it is, in words. */
  title: LineZ,
  family: FamilyZ,
  grid: GridZ,
  pins: z.array(PinZ).max(LIMITS.gridSide * LIMITS.gridSide),
  shroud: ShroudZ.optional(),
  /** Centre of the first cell, from the board's top left corner; turned about that cell. */
  place: PlaceZ,
  /** What it may be asked for. */
  rating: RatingZ.optional(),
  /** What was measured on it, in the order in which it was noted. */
  readings: z.array(PinReadingZ).max(LIMITS.readingsPerConnector).optional(),
  notes: NotesZ.optional(),
});

export type Pin = z.infer<typeof PinZ>;
export type Alternative = z.infer<typeof AlternativeZ>;
export type PinSource = z.infer<typeof SourceZ>;
export type Side = (typeof SIDES)[number];
export type Shroud = z.infer<typeof ShroudZ>;
export type Place = z.infer<typeof PlaceZ>;
export type Connector = z.infer<typeof ConnectorZ>;
