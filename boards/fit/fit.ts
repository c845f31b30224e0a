import type { Pin, Side } from '../document/connector';
import type { Cell } from '../document/grid';
import type { HoleState, PlugRef } from '../document/lookup';

/** One hole of a plug and what lies under it. */
export interface Landing {
  readonly hole: string;
  readonly state: HoleState;
  readonly cell: Cell;
  /** The position under the hole, a missing pin included; undefined where the plug hangs over. */
  readonly pin?: Pin;
}

/**
 * Why a plug cannot sit there. Closed: every one has words in fit-words.ts. Sides are those of the
 * unturned connector.
 */
export type FitRefusal =
  | { readonly code: 'family'; readonly plug: string; readonly connector: string }
  | { readonly code: 'pitch'; readonly plugMm: number; readonly connectorMm: number }
  /** A pin would meet the stop in a hole: the key. */
  | { readonly code: 'blocked-hole'; readonly hole: string; readonly pin: string }
  /** A pin would meet the plug's body where it has no hole at all. */
  | { readonly code: 'no-hole'; readonly pin: string }
  /** Another plug is there. `pins`: those both would cover; none where the bodies meet beside the pins. */
  | { readonly code: 'occupied'; readonly by: PlugRef; readonly pins: readonly string[] }
  /** The plug would hang over this side, and a wall stands there. */
  | { readonly code: 'wall'; readonly side: Side; readonly connector: string }
  /** The slot or ramp is on this side, and the plug's rib faces another. */
  | { readonly code: 'guide'; readonly side: Side; readonly connector: string }
  /** The plug's rib faces this side, where a wall has no slot for it. */
  | { readonly code: 'rib'; readonly side: Side; readonly connector: string }
  /** The part that hangs over meets another connector. */
  | { readonly code: 'obstructed'; readonly by: string }
  | { readonly code: 'no-pin' };

/** Geometry's whole answer for one plug in one place. It can sit there when nothing refuses. */
export interface Fit {
  readonly landings: readonly Landing[];
  readonly refusals: readonly FitRefusal[];
  /** Holes beyond the connector's edge: possible where nothing is in the way, and said so. */
  readonly overhang: readonly string[];
}
