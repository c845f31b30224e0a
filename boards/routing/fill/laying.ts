import type { Mm } from '../../base/units';
import type { Tray } from '../../document/tray';

/** What cables of one make have in common. */
export interface CableKind {
  readonly id: string;
  readonly diameterMm: Mm;
  readonly bendRadiusMm?: Mm;
  /** What has to be left over at each of its ends. */
  readonly slackMm: Mm;
}

/** One run of a cable, to be laid from one place to another. */
export interface Cable {
  readonly id: string;
  readonly kind: string;
  /** A point, a bay or the supply. */
  readonly from: string;
  readonly to: string;
  readonly lengthMm: Mm;
}

/** A tray with all that is to be laid in it: the question that every search for routes answers. */
export interface Laying extends Tray {
  readonly cableKinds: readonly CableKind[];
  readonly cables: readonly Cable[];
}
