import type { Mm } from '../../base/units';
import type { Opening } from '../../document/tray';
import type { RouteCost } from './route-cost';

/** An opening, and the thickness of what lies in it for good. */
export interface SharedOpening {
  readonly opening: Opening;
  readonly heldMm: readonly Mm[];
}

/** One way of a cable: what it costs, and which of the contested openings it takes room in. */
export interface RouteChoice {
  readonly cost: RouteCost;
  readonly openings: readonly number[];
}

/** A cable that is to be given one of its choices, the cheapest first, or to be left. */
export interface Wanting {
  readonly diameterMm: Mm;
  readonly choices: readonly RouteChoice[];
  /** Cables of one name have equal choices and thickness, and may change places without any effect. */
  readonly like: string;
}
