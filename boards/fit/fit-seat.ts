import type { Build, Seat } from '../document/build';
import { gridIndex } from '../document/numbering';
import { entryRefusals } from './entry';
import type { Fit, FitRefusal, Landing } from './fit';
import { cellUnder } from './geometry';
import { isOutside, landingsOf, meetsPin, standingPinAt } from './landing';
import { roomRefusals } from './room';
import { type SeatedPlug, seatedPlug } from './seated-plug';

/**
 * Whether a plug can sit there, what lies under each of its holes, and everything that refuses. The
 * plug's own present seat is no obstacle. Where its shape or pitch refuses, nothing else is asked.
 */
export function fitSeat(build: Build, seat: Seat): Fit {
  return fitPlug(build, seatedPlug(build, seat));
}

/** The same, for ids that are already looked up. */
export function fitPlug(build: Build, seated: SeatedPlug): Fit {
  const landings = landingsOf(seated);
  const { plug, connector, seat } = seated;
  const entry = entryRefusals(plug, connector, seat.turn);
  const foreign = entry.some(({ code }) => code === 'family' || code === 'pitch');
  return {
    landings,
    refusals: foreign ? entry : [...entry, ...pinRefusals(seated, landings), ...roomRefusals(build, seated)],
    overhang: landings.filter(({ cell }) => isOutside(connector.grid, cell)).map(({ hole }) => hole),
  };
}

/** What the standing pins refuse: a stop, a body without a hole, or that none of them is met. */
function pinRefusals(seated: SeatedPlug, landings: readonly Landing[]): readonly FitRefusal[] {
  if (!landings.some(meetsPin)) return [{ code: 'no-pin' }];
  return [
    ...landings.flatMap((landing): readonly FitRefusal[] =>
      landing.state === 'blocked' && meetsPin(landing) && landing.pin
        ? [{ code: 'blocked-hole', hole: landing.hole, pin: landing.pin.pin }]
        : [],
    ),
    ...pinsWithoutHole(seated).map((pin): FitRefusal => ({ code: 'no-hole', pin })),
  ];
}

/** Standing pins under cells of the plug's body that have no hole. */
function pinsWithoutHole({ plug, connector, seat }: SeatedPlug): readonly string[] {
  const { rows, cols } = plug.grid;
  const holes = gridIndex(plug.grid);
  if (holes.positions.length === rows * cols) return [];
  const pins: string[] = [];
  for (let row = 0; row < rows; row++)
    for (let col = 0; col < cols; col++) {
      if (holes.labelAt([row, col]) !== undefined) continue;
      const pin = standingPinAt(connector, cellUnder(seat, [row, col]));
      if (pin) pins.push(pin.pin);
    }
  return pins;
}
