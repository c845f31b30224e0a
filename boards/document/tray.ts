import { z } from 'zod';
import { SIDES } from './connector';
import { LIMITS } from './limits';
import { IdZ, LineZ } from './text';

/** The side of the tray that the board is on, and is seen; and the one behind the other side panel. */
const TRAY_SIDES = ['front', 'back'] as const;

/** What a cable lies on in an opening: a rubber ring, metal bent round, or the bare cut. */
const EDGES = ['grommet', 'rolled', 'bare'] as const;

/** Walls of a case that a fan is screwed to; the side is either of the two panels. */
const WALLS = ['front', 'rear', 'top', 'bottom', 'side'] as const;

/** Where the side of a fan with the struts looks. */
const STRUTS_FACE = ['inward', 'outward'] as const;

/** What is seen at a place of a standoff: one is in it, or none. */
export const SEEN_AT_STANDOFF = ['set', 'empty'] as const;

/** What a point is: a place where cables are tied down, one where they bend, or one where they end. */
const POINT_KINDS = ['tie', 'bend', 'end'] as const;

const SizeMmZ = z.number().positive().max(2_000);
const PlaceMmZ = z.number().min(-2_000).max(2_000);
const LengthMmZ = z.number().positive().max(20_000);

/** A rectangle by its top left corner, seen from the front. */
const AREA = { xMm: PlaceMmZ, yMm: PlaceMmZ, widthMm: SizeMmZ, heightMm: SizeMmZ };

const PointZ = z.strictObject({
  id: IdZ,
  name: LineZ.optional(),
  kind: z.enum(POINT_KINDS),
  xMm: PlaceMmZ,
  yMm: PlaceMmZ,
});

/** A hole in the tray: the only place where a cable changes sides. */
const OpeningZ = z.strictObject({
  id: IdZ,
  name: LineZ.optional(),
  ...AREA,
  /** Round or oval, as wide and as high as is said; a rectangle where nothing is said. */
  round: z.literal(true).optional(),
  edge: z.enum(EDGES),
});

/** A place for a drive. */
const BayZ = z.strictObject({ id: IdZ, name: LineZ.optional(), ...AREA });

/** Where the supply unit sits, and its cables begin. */
const SupplyZ = z.strictObject({ id: IdZ, ...AREA });

/**
 * Where boards go. All published sizes share one corner, where the rear edge meets the right one when the
 * rear panel is at the top and the component side is seen; they grow away from it.
 */
const BoardPlaceZ = z.strictObject({ xMm: PlaceMmZ, yMm: PlaceMmZ, rear: z.enum(SIDES) });

/** A place of the tray where a standoff is, or can be screwed in. */
const StandoffZ = z.strictObject({
  id: IdZ,
  name: LineZ.optional(),
  /** Its centre. */
  xMm: PlaceMmZ,
  yMm: PlaceMmZ,
  /** Pressed into the metal: it cannot be taken out. */
  fixed: z.literal(true).optional(),
  /** Whether a standoff is in it; nothing where nobody has looked, or it is fixed. */
  seen: z.enum(SEEN_AT_STANDOFF).optional(),
});

/** A place for a fan that moves air through a wall of the case. */
const FanPlaceZ = z.strictObject({
  id: IdZ,
  name: LineZ.optional(),
  wall: z.enum(WALLS),
  /** Of the fan that is there; nothing where there is none, or nobody has looked. */
  strutsFace: z.enum(STRUTS_FACE).optional(),
  /** What its maker says that it moves with nothing in the way. */
  flowM3PerHour: z.number().positive().max(2_000).optional(),
});

/** A way along one side of the tray, from one place to another; measured, so no straight line is assumed. */
const PathZ = z.strictObject({ id: IdZ, from: IdZ, to: IdZ, lengthMm: LengthMmZ, side: z.enum(TRAY_SIDES) });

/** The sheet of metal that carries the board, with all that cables meet on their way. Seen from the front. */
export const TrayZ = z.strictObject({
  widthMm: SizeMmZ,
  heightMm: SizeMmZ,
  /** The room behind it, up to the side panel. */
  behindMm: SizeMmZ.optional(),
  points: z.array(PointZ).max(LIMITS.trayPoints),
  openings: z.array(OpeningZ).max(LIMITS.trayOpenings),
  bays: z.array(BayZ).max(LIMITS.trayBays),
  supply: SupplyZ.optional(),
  board: BoardPlaceZ.optional(),
  standoffs: z.array(StandoffZ).max(LIMITS.trayStandoffs).optional(),
  fans: z.array(FanPlaceZ).max(LIMITS.trayFans).optional(),
  paths: z.array(PathZ).max(LIMITS.trayPaths),
});

export type TraySide = (typeof TRAY_SIDES)[number];
export type BoardPlace = z.infer<typeof BoardPlaceZ>;
export type Standoff = z.infer<typeof StandoffZ>;
export type FanPlace = z.infer<typeof FanPlaceZ>;
export type Opening = z.infer<typeof OpeningZ>;
export type Tray = z.infer<typeof TrayZ>;
