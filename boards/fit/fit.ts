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

/** Why a plug cannot sit there. Closed: every one has words in fit-words.ts. */
export type FitRefusal =
  | { readonly code: 'family'; readonly plug: string; readonly connector: string }
  | { readonly code: 'pitch'; readonly plugMm: number; readonly connectorMm: number }
  | { readonly code: 'blocked-hole'; readonly hole: string; readonly pin: string }
  | { readonly code: 'occupied'; readonly by: PlugRef; readonly pins: readonly string[] }
  | { readonly code: 'wall'; readonly side: Side }
  | { readonly code: 'guide'; readonly side: Side }
  | { readonly code: 'obstructed'; readonly by: string }
  | { readonly code: 'no-pin' };

/** Geometry's whole answer for one plug in one place. It can sit there when nothing refuses. */
export interface Fit {
  readonly landings: readonly Landing[];
  readonly refusals: readonly FitRefusal[];
  /** Holes beyond the connector's edge: possible where nothing is in the way, and said so. */
  readonly overhang: readonly string[];
}
