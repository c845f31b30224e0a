import type { FitRefusal, Landing } from './fit';
import { boxesCollide } from './geometry';
import type { LaidPlug } from './laid-plug';
import { meetsPin } from './landing';
import { pinPoints } from './pin-points';

/** What the standing pins refuse: a stop, a body without a hole, or that none of them is met. */
export function pinRefusals(laid: LaidPlug): readonly FitRefusal[] {
  const met = laid.landings.filter(meetsPin);
  if (met.length === 0) return [{ code: 'no-pin' }];
  return [
    ...met.flatMap(({ hole, state, pin }): readonly FitRefusal[] =>
      state === 'blocked' && pin ? [{ code: 'blocked-hole', hole, pin: pin.pin }] : [],
    ),
    ...pinsWithoutHole(laid, met),
  ];
}

function pinsWithoutHole({ connector, body }: LaidPlug, met: readonly Landing[]): readonly FitRefusal[] {
  const covered = pinPoints(connector).filter(({ stands, post }) => stands && boxesCollide(post, body));
  // Every pin in a hole is under the body, so equal numbers mean that none is left over.
  if (covered.length === met.length) return [];
  const inHole = new Set(met.map(({ pin }) => pin?.pin));
  return covered.filter(({ pin }) => !inHole.has(pin)).map(({ pin }) => ({ code: 'no-hole', pin }));
}
