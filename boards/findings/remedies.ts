import { byIdentity } from '../base/by-identity';
import { type PlugRef, plugKey, samePlug, seatOf } from '../document/lookup';
import { fitSeat } from '../fit/fit-seat';
import { portsOf } from '../fit/match';
import { plugRefOf } from './about';
import type { CheckContext } from './context';
import type { Remedy } from './finding';
import { narrowingRemedies } from './narrowing';
import { nearestSeats } from './nearest-seats';
import { legsAtFault, placementOf } from './placement';
import type { Leg, SeatedPart } from './seated-part';
import { tooWideFor } from './too-wide';
import { clearText, leaveOffText, moveText, onePortText, stuckText, takeOffText } from './words/remedies';

/** What to do with a plug that is not where it should be: its right place, or how to come by one. */
export function remediesFor(context: CheckContext, ref: PlugRef): readonly Remedy[] {
  const found = known(context);
  const key = plugKey(ref);
  const remedies = found.get(key) ?? workedOut(context, ref);
  found.set(key, remedies);
  return remedies;
}

/** Several rules ask about one plug within a check. */
const known = byIdentity((_: CheckContext) => new Map<string, readonly Remedy[]>());

function workedOut(context: CheckContext, ref: PlugRef): readonly Remedy[] {
  const { build } = context;
  const [best] = nearestSeats(context, ref);
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

/** The remedies for the plugs that a part's wires lie wrong in; for all of its plugs where none does by itself. */
export function remediesForPart(context: CheckContext, part: SeatedPart): readonly Remedy[] {
  const refs = plugsOf(legsAtFault(part));
  // Single plugs of one port have to go to the same port: which, is for the person to choose.
  if (plugsOf(part.legs).length > 1 && portsOf(part.legs).size > 0)
    return [{ text: onePortText(part.kind.name) }];
  return refs.flatMap((ref) => remediesFor(context, ref));
}

/** For a switch that is where it belongs and cannot open: no other place helps. */
export function remediesForStuck({ build }: CheckContext, part: SeatedPart): readonly Remedy[] {
  return plugsOf(part.legs).map((ref) => ({
    text: stuckText(build, ref, part.kind.name),
    command: { name: 'unseat-plug', args: ref },
  }));
}

function plugsOf(legs: readonly Leg[]): readonly PlugRef[] {
  return [...new Map(legs.map((leg) => [leg.joint.plug.id, plugRefOf(leg)])).values()];
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
