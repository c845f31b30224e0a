import type { Build, Seat } from '../document/build';
import { type PlugRef, seatOf } from '../document/lookup';
import { plugCentre } from '../fit/geometry';
import { type Joint, jointsOfPlug } from '../fit/joints';
import { seatedPlug } from '../fit/seated-plug';
import { partKindOf } from '../signals/part-kinds';
import type { CheckContext } from './context';

/**
 * The right and free places of a plug that change something: where no wire has to do with a second choice first,
 * then on its present connector, then on the pins most its own, then nearest to where it sits. For a loose
 * plug, as the places come.
 */
export function nearestSeats({ build, properSeats }: CheckContext, ref: PlugRef): readonly Seat[] {
  const now = seatOf(build, ref);
  if (!now) return properSeats(ref);
  const contacts = contactsOf(build, now);
  return properSeats(ref)
    .filter((seat) => contactsOf(build, seat) !== contacts)
    .map((seat) => ({ seat, cost: costOf(build, now, seat) }))
    .sort((a, b) => a.cost - b.cost)
    .map(({ seat }) => seat);
}

/**
 * Whole millimetres from middle to middle. Another job's pin, more so another connector, and most of all a second
 * choice outweighs any way: a ground beside would otherwise be nearer than the pin that switches an LED.
 */
function costOf(build: Build, now: Seat, seat: Seat): number {
  const elsewhere = seat.connector === now.connector ? 0 : 1;
  const { plug, connector } = seatedPlug(build, seat);
  const from = elsewhere ? undefined : plugCentre(plug, connector, now);
  const to = plugCentre(plug, connector, seat);
  const wayMm = from ? Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm) : 0;
  const turned = seat.turn === now.turn ? 0 : 0.1;
  const joints = jointsAt(build, seat);
  return (
    1e8 * joints.filter(isSecondChoice).length +
    1e6 * elsewhere +
    1e4 * joints.filter(isOfAnotherJob).length +
    Math.round(wayMm) +
    turned
  );
}

function isSecondChoice({ pin, terminal }: Joint): boolean {
  return pin?.signal !== undefined && terminal !== undefined && terminal.wants.indexOf(pin.signal) > 0;
}

function isOfAnotherJob({ pin, part }: Joint): boolean {
  return pin?.belongsTo !== undefined && part !== undefined && pin.belongsTo !== partKindOf(part.kind).job;
}

/** Which wire lies on which pin: two seats of a single-hole plug may differ in nothing but the turn. */
function contactsOf(build: Build, seat: Seat): string {
  const joints = jointsAt(build, seat).map(({ hole, pin }) => `${hole}:${pin?.pin ?? ''}`);
  return `${seat.connector} ${joints.join()}`;
}

function jointsAt(build: Build, seat: Seat): readonly Joint[] {
  return jointsOfPlug(seatedPlug(build, seat));
}
