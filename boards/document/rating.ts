import { z } from 'zod';
import { LIMITS } from './limits';
import { IdZ, NameZ } from './text';

/** How a header sets the speed of a fan: by pulses on a fourth wire, or by the voltage itself. */
export const SPEED_MODES = ['pwm', 'dc'] as const;

/** Line rates of the three published generations of Serial ATA, in Gb/s (revisions 1, 2 and 3). */
export const LINE_RATES_GBPS = [1.5, 3, 6] as const;

const AmpsZ = z.number().positive().max(100);
const LineRateZ = z.literal(LINE_RATES_GBPS);

/** What a connector may be asked for, as the manual of its board or unit says. */
export const RatingZ = z.strictObject({
  /** What it may carry altogether. */
  amps: AmpsZ.optional(),
  /** Of a header for a fan. */
  fanModes: z.array(z.enum(SPEED_MODES)).max(SPEED_MODES.length).optional(),
  /** The board does not start, or warns, when no speed is reported here. */
  watched: z.literal(true).optional(),
  /** Of a port for a drive's data cable. */
  lineRateGbps: LineRateZ.optional(),
  /** Places for drives on the board that switch the port off when something is in them. */
  offWith: z.array(IdZ).max(LIMITS.drivePlaces).optional(),
});

/** What a fan takes, as its label says. */
export const FanRatingZ = z.strictObject({
  runningAmps: AmpsZ,
  /** For the first second or so. */
  startAmps: AmpsZ,
  cools: z.enum(['processor', 'case']),
});

/** What a drive takes and moves. */
export const DriveRatingZ = z.strictObject({
  lineRateGbps: LineRateZ,
  /** What it moves at best, where its maker says so. */
  fastestMBps: z.number().positive().max(100_000).optional(),
  /** On the 12 V rail, while it spins up; of one that does not turn, at its busiest. */
  startAmps: AmpsZ.optional(),
});

/** What a hub for fans does with what comes in. */
export const HubRatingZ = z.strictObject({
  /** `supply`: it has a lead to the supply unit, and takes only the speed signal from the header. */
  fedBy: z.enum(['header', 'supply']),
  /** What its outlets may carry together. */
  amps: AmpsZ,
  /** The connector whose fan reports its speed to the header; none of them where nothing is said. */
  speedOutlet: IdZ.optional(),
});

/** A place on the board for a drive without cables. */
export const DrivePlaceZ = z.strictObject({ id: IdZ, name: NameZ });

/** What a person has decided about where something goes. */
export const ChoiceZ = z.strictObject({
  /** A drive on a data port; a fan on a header or a hub's outlet; a drive on a branch, which is a lead. */
  kind: z.enum(['port', 'header', 'branch']),
  /** The drive's unit, or the fan's lead. */
  of: IdZ,
  on: IdZ,
});

export type SpeedMode = (typeof SPEED_MODES)[number];
export type LineRateGbps = (typeof LINE_RATES_GBPS)[number];
export type Rating = z.infer<typeof RatingZ>;
export type FanRating = z.infer<typeof FanRatingZ>;
export type DriveRating = z.infer<typeof DriveRatingZ>;
export type HubRating = z.infer<typeof HubRatingZ>;
export type PlaceChoice = z.infer<typeof ChoiceZ>;
