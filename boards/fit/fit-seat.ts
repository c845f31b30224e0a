import type { Build, Seat } from '../document/build';
import { boardRefusals, isForeign } from './board-refusals';
import type { Fit } from './fit';
import { layDown, overhangOf } from './laid-plug';
import { plugRefusals } from './plug-refusals';
import { carrierOf, type SeatedPlug, seatedPlug } from './seated-plug';

/**
 * Whether a plug can sit there, what lies under each of its holes, and everything that refuses. The
 * plug's own present seat is no obstacle. Where its shape or pitch refuses, nothing else is asked.
 */
export function fitSeat(build: Build, seat: Seat): Fit {
  return fitPlug(build, seatedPlug(build, seat));
}

/** The same, for ids that are already looked up. */
export function fitPlug(build: Build, seated: SeatedPlug): Fit {
  const laid = layDown(seated);
  const fromBoard = boardRefusals(carrierOf(build, seated.connector.id), laid);
  return {
    landings: laid.landings,
    refusals: isForeign(fromBoard) ? fromBoard : [...fromBoard, ...plugRefusals(build, laid)],
    overhang: overhangOf(laid),
  };
}
