import { byIdentity } from '../base/by-identity';
import type { Seat } from '../document/build';
import { type PlugRef, plugKey, samePlug, seatOf } from '../document/lookup';
import { fitSeat } from '../fit/fit-seat';
import { couldSuit, portsOf } from '../fit/match';
import { plugRefOf } from './about';
import { betterSeats } from './better-seats';
import type { CheckContext } from './context';
import type { Remedy } from './finding';
import { narrowingRemedies } from './narrowing';
import { nearestSeats } from './nearest-seats';
import { hindranceOf } from './partners';
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
  const hindrance = seatOf(context.build, ref) ? undefined : hindranceOf(context, ref);
  // Seated now it could close a harmful way; the other plug's own finding says what to do first.
  if (hindrance === 'partner-wrong') return [];
  const [best] = hindrance ? [] : nearestSeats(context, ref);
  if (best) return [moveRemedy(context, ref, best)];
  const tooWide = tooWideFor(context, ref);
  const ways = [...clearRemedies(context, ref), ...(tooWide ? narrowingRemedies(context, tooWide) : [])];
  return ways.length > 0 ? ways : [withoutPlace(context, ref)];
}

/** The remedies for the plugs that a part's wires lie wrong in; for all of its plugs where none does by itself. */
export function remediesForPart(context: CheckContext, part: SeatedPart): readonly Remedy[] {
  const refs = plugsOf(legsAtFault(part));
  // Single plugs of one port have to go to the same port: which, is for the person to choose.
  if (plugsOf(part.legs).length > 1 && portsOf(part.legs).size > 0)
    return [{ text: onePortText(part.kind.name) }];
  const isAlone = plugsOf(part.legs).length === 1;
  return refs.flatMap((ref) => {
    const legs = part.legs.filter((leg) => samePlug(plugRefOf(leg), ref));
    if (!legs.every((leg) => couldSuit(part.kind, leg))) return remediesFor(context, ref);
    return isAlone
      ? remediesFor(context, ref).filter((remedy) => !isTakingOff(remedy, ref))
      : better(context, part, ref);
  });
}

/** For a single plug whose own wire could be right: to pins more its own, and nowhere where it would be no better. */
function better(context: CheckContext, part: SeatedPart, ref: PlugRef): readonly Remedy[] {
  const [best] = betterSeats(context, part, ref);
  return best ? [moveRemedy(context, ref, best)] : clearRemedies(context, ref);
}

/** Where a plug is, it could be right: that the board has no place for it would be untrue. */
function isTakingOff({ command }: Remedy, ref: PlugRef): boolean {
  return command?.name === 'unseat-plug' && samePlug(command.args, ref);
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

function moveRemedy({ build }: CheckContext, ref: PlugRef, to: Seat): Remedy {
  return { text: moveText(build, ref, to), command: { name: 'seat-plug', args: to } };
}

function clearRemedies(context: CheckContext, ref: PlugRef): readonly Remedy[] {
  return occupantsOf(context, ref)
    .filter((other) => !sitsRight(context, other))
    .map((other) => clearRemedy(context, ref, other));
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
