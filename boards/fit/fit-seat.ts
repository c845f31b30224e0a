import type { Build, Seat } from '../document/build';
import { entryRefusals } from './entry';
import type { Fit, FitRefusal, Landing } from './fit';
import { type Box, boxesCollide, plugBox } from './geometry';
import { isOutside, landingsOf, meetsPin } from './landing';
import { pinPoints } from './pin-points';
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
  const body = plugBox(plug, connector, seat);
  return {
    landings,
    refusals: foreign
      ? entry
      : [...entry, ...pinRefusals(seated, landings, body), ...roomRefusals(build, seated, body)],
    overhang: landings.filter(({ cell }) => isOutside(connector.grid, cell)).map(({ hole }) => hole),
  };
}

/** What the standing pins refuse: a stop, a body without a hole, or that none of them is met. */
function pinRefusals(seated: SeatedPlug, landings: readonly Landing[], body: Box): readonly FitRefusal[] {
  const met = landings.filter(meetsPin);
  if (met.length === 0) return [{ code: 'no-pin' }];
  return [
    ...met.flatMap(({ hole, state, pin }): readonly FitRefusal[] =>
      state === 'blocked' && pin ? [{ code: 'blocked-hole', hole, pin: pin.pin }] : [],
    ),
    ...pinsWithoutHole(seated, met, body),
  ];
}

function pinsWithoutHole(
  { connector }: SeatedPlug,
  met: readonly Landing[],
  body: Box,
): readonly FitRefusal[] {
  const covered = pinPoints(connector).filter(({ stands, post }) => stands && boxesCollide(post, body));
  // Every pin in a hole is under the body, so equal numbers mean that none is left over.
  if (covered.length === met.length) return [];
  const inHole = new Set(met.map(({ pin }) => pin?.pin));
  return covered.filter(({ pin }) => !inHole.has(pin)).map(({ pin }) => ({ code: 'no-hole', pin }));
}
