import type { Seat } from '../document/build';
import { type PlugRef, samePlug, seatOf } from '../document/lookup';
import { type Joint, jointsOfPlug } from '../fit/joints';
import { matchOf } from '../fit/match';
import { strangeness } from '../fit/proper-seats';
import { seatedPlug } from '../fit/seated-plug';
import { plugRefOf } from './about';
import type { CheckContext } from './context';
import { nearestSeats } from './nearest-seats';
import { placementOf } from './placement';
import { type Leg, onPin, type SeatedPart } from './seated-part';

/**
 * Where a single plug would be better, whose own wire could be right as it is: on the pins that make the part with
 * its other wires right, or where it is already, on pins more its own. Never where it would be no better, or
 * two presses of a button would lead in a ring.
 */
export function betterSeats(context: CheckContext, part: SeatedPart, ref: PlugRef): readonly Seat[] {
  const { build } = context;
  const now = seatOf(build, ref);
  if (!now) return [];
  const jointsAt = (seat: Seat) => jointsOfPlug(seatedPlug(build, seat));
  const seats = nearestSeats(context, ref);
  if (placementOf(part) !== 'right')
    return seats.filter((seat) => placementOf(moved(part, ref, jointsAt(seat))) === 'right');
  const strange = (seat: Seat) => strangeness(matchOf(jointsAt(seat)));
  return seats.filter((seat) => strange(seat) < strange(now));
}

/** A part with one of its plugs elsewhere. */
function moved(seated: SeatedPart, ref: PlugRef, joints: readonly Joint[]): SeatedPart {
  const others = seated.legs.filter((leg) => !samePlug(plugRefOf(leg), ref));
  const own = joints.flatMap((joint): readonly Leg[] => {
    const { pin, part, terminal } = joint;
    return pin && terminal && part === seated.part ? [{ ...onPin(joint, pin), terminal }] : [];
  });
  return { ...seated, legs: [...others, ...own] };
}
