import { byIdentity } from '../base/by-identity';
import type { Seat } from '../document/build';
import { type PlugRef, samePlug, seatOf } from '../document/lookup';
import { fitSeat } from '../fit/fit-seat';
import { plugRefOf } from './about';
import type { CheckContext } from './context';
import type { Remedy } from './finding';
import { narrowingRemedies } from './narrowing';
import { placementOf } from './placement';
import type { SeatedPart } from './seated-part';
import { tooWideFor } from './too-wide';
import { clearText, leaveOffText, moveText, takeOffText } from './words/remedies';

/** What to do with a plug that is not where it should be: its right place, or how to come by one. */
export function remediesFor(context: CheckContext, ref: PlugRef): readonly Remedy[] {
  const found = known(context);
  const key = `${ref.lead} ${ref.plug}`;
  const remedies = found.get(key) ?? workedOut(context, ref);
  found.set(key, remedies);
  return remedies;
}

/** Several rules ask about one plug within a check. */
const known = byIdentity((_: CheckContext) => new Map<string, readonly Remedy[]>());

function workedOut(context: CheckContext, ref: PlugRef): readonly Remedy[] {
  const { build } = context;
  const [best] = nearestFirst(context, ref);
  if (best) return [{ text: moveText(build, ref, best), command: { name: 'seat-plug', args: best } }];
  const tooWide = tooWideFor(context, ref);
  const ways = [
    ...occupantsOf(context, ref)
      .filter((other) => !sitsRight(context, other))
      .map((other) => clearRemedy(context, ref, other)),
    ...(tooWide ? narrowingRemedies(context, tooWide) : []),
  ];
  return ways.length > 0 ? ways : [withoutPlace(context, ref)];
}

/** The remedies for every plug that a part's wires lie in. */
export function remediesForPart(context: CheckContext, { legs }: SeatedPart): readonly Remedy[] {
  const refs = new Map(legs.map((leg) => [leg.joint.plug.id, plugRefOf(leg)]));
  return [...refs.values()].flatMap((ref) => remediesFor(context, ref));
}

/** The plugs that sit where the given one belongs, when nothing else keeps it from there. */
export function occupantsOf({ build, properSeatsWhenBare }: CheckContext, ref: PlugRef): readonly PlugRef[] {
  for (const seat of properSeatsWhenBare(ref)) {
    const { refusals } = fitSeat(build, seat);
    const others = refusals.flatMap((refusal) => (refusal.code === 'occupied' ? [refusal.by] : []));
    if (others.length > 0 && others.length === refusals.length) return others;
  }
  return [];
}

/** Right and free places other than the present one: on the same connector and in the same turn first. */
function nearestFirst({ build, properSeats }: CheckContext, ref: PlugRef): readonly Seat[] {
  const now = seatOf(build, ref);
  if (!now) return properSeats(ref);
  const away = (seat: Seat) => (seat.connector === now.connector ? 0 : 2) + (seat.turn === now.turn ? 0 : 1);
  return properSeats(ref)
    .filter((seat) => !sameSeat(seat, now))
    .toSorted((a, b) => away(a) - away(b));
}

function clearRemedy({ build }: CheckContext, ref: PlugRef, other: PlugRef): Remedy {
  return { text: clearText(build, ref, other), command: { name: 'unseat-plug', args: other } };
}

function withoutPlace({ build }: CheckContext, ref: PlugRef): Remedy {
  if (seatOf(build, ref))
    return { text: takeOffText(build, ref), command: { name: 'unseat-plug', args: ref } };
  const args = { lead: ref.lead, aside: true };
  return { text: leaveOffText(build, ref), command: { name: 'set-lead-aside', args } };
}

function sitsRight({ plugs }: CheckContext, ref: PlugRef): boolean {
  const other = plugs.find((plug) => samePlug(plug.ref, ref));
  return other?.parts.every((part) => placementOf(part) === 'right') ?? false;
}

function sameSeat(a: Seat, b: Seat): boolean {
  const samePlace = a.connector === b.connector && a.turn === b.turn;
  return samePlug(a, b) && samePlace && a.at[0] === b.at[0] && a.at[1] === b.at[1];
}
