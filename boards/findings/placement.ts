import { byIdentity } from '../base/by-identity';
import { couldSuit, verdictOf } from '../fit/match';
import type { PartKind } from '../signals/part-kind';
import { isLed, isSwitch } from '../signals/part-traits';
import type { Job } from '../signals/signal';
import { type SignalId, signalOf } from '../signals/signals';
import { across } from './across';
import { jobAt, type Leg, pairsOf, type SeatedPart } from './seated-part';

/** How the wires of a part lie, judged by signals alone. */
type Placement = 'right' | 'reversed' | 'ports-mixed' | 'wrong';

/**
 * The verdict on the wires that lie on pins of known meaning. Unknown pins are no evidence either way,
 * and wires that meet no pin are told by their plug.
 */
export const placementOf = byIdentity((part: SeatedPart): Placement => {
  const verdict = verdictOf(part.kind, knownLegs(part));
  if (verdict === 'reversed' && part.kind.reversed === 'harm' && !hasSupply(part)) return 'wrong';
  return verdict === 'unknown' ? 'wrong' : verdict;
});

/** Without a wire of its supply a port is not fed, nor the wrong way round: its wires are only exchanged. */
function hasSupply({ legs }: SeatedPart): boolean {
  const isSupply = (id: SignalId) => signalOf(id).nature === 'supply';
  return legs.some(({ id, terminal }) => isSupply(id) || terminal.wants.some(isSupply));
}

/** The wires of a part on pins whose meaning the sheet gives. */
function knownLegs({ legs }: SeatedPart): readonly Leg[] {
  return legs.filter(({ id }) => id !== 'unknown');
}

/** The wires of a part on known pins that they are not made for, whichever way round. */
export function wrongLegs(part: SeatedPart): readonly Leg[] {
  return knownLegs(part).filter((leg) => !couldSuit(part.kind, leg));
}

/** The wires that a finding about a part's place is about: the wrong ones, or all where none is wrong by itself. */
export function legsAtFault(part: SeatedPart): readonly Leg[] {
  const wrong = wrongLegs(part);
  return wrong.length > 0 ? wrong : part.legs;
}

/** The jobs whose pins a part's wires lie on. Shared rails and grounds without a job count for none. */
export function jobsUnder(part: SeatedPart): readonly Job[] {
  return [...new Set(knownLegs(part).flatMap((leg) => jobAt(leg) ?? []))];
}

/**
 * The job that a switch or an LED does where its wires lie; none where it would do nothing, or joins a supply
 * to something as well. Of two jobs at once, the one that is not its own.
 */
export function actsAs(part: SeatedPart): Job | undefined {
  const pairs = pairsOf(part);
  if (pairs.some((pair) => 'volts' in across(...pair))) return undefined;
  const jobs = pairs.flatMap((pair) => jobBetween(part.kind, pair) ?? []);
  return jobs.find((job) => job !== part.kind.job) ?? jobs[0];
}

function jobBetween(kind: PartKind, pair: readonly [Leg, Leg]): Job | undefined {
  const found = across(...pair);
  const forward = 'high' in found && found.high === pair[0];
  if (found.kind === 'input-and-ground' && isSwitch(kind))
    return forward || kind.exchangeable !== undefined ? found.job : undefined;
  return found.kind === 'feed-and-sink' && isLed(kind) && forward ? found.job : undefined;
}
