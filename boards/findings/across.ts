import type { Volts } from '../base/units';
import type { Job } from '../signals/signal';
import type { SignalId } from '../signals/signals';
import { jobAt, type Leg, type OnPin, pairsOf, type SeatedPart } from './seated-part';

/**
 * What lies between two pins that something joins, as far as their signals tell. This is the seam for
 * currents: a rule asks here, and says "would" without a number, until a circuit answers instead.
 */
type Across<P extends OnPin = OnPin> =
  | {
      readonly kind: 'supply-and-ground' | 'supply-and-signal' | 'two-supplies';
      readonly volts: Volts;
      readonly high: P;
      readonly low: P;
    }
  | { readonly kind: 'input-and-ground'; readonly job: Job; readonly input: SignalId; readonly high: P }
  | { readonly kind: 'feed-and-ground'; readonly high: P }
  | { readonly kind: 'feed-and-sink'; readonly job: Job | undefined; readonly high: P }
  | { readonly kind: 'nothing' };

/** The case between two pins. Symmetric: the order does not matter. */
export function across<P extends OnPin>(first: P, second: P): Across<P> {
  return between(first, second) ?? between(second, first) ?? { kind: 'nothing' };
}

/** A supply at one of the two pins. */
type Supplied<P extends OnPin> = Extract<Across<P>, { readonly volts: Volts }>;

/**
 * The worst of what a part with two terminals joins to a supply, of the cases that count: the highest supply,
 * and of one supply the way to ground. Which plug was seated first makes no difference.
 */
export function worstSupplied(
  part: SeatedPart,
  counts: (found: Supplied<Leg>) => boolean,
): Supplied<Leg> | undefined {
  const found = pairsOf(part)
    .map((pair) => across(...pair))
    .filter((each): each is Supplied<Leg> => 'volts' in each && counts(each));
  const rank = ({ volts, kind }: Supplied<Leg>) => 2 * volts + (kind === 'supply-and-ground' ? 1 : 0);
  return found.toSorted((a, b) => rank(b) - rank(a))[0];
}

function between<P extends OnPin>(high: P, low: P): Across<P> | undefined {
  const below = low.signal.nature;
  switch (high.signal.nature) {
    case 'supply':
      return fromSupply(high, low);
    case 'input': {
      const job = jobAt(high);
      if (below !== 'ground' || job === undefined) return undefined;
      return { kind: 'input-and-ground', job, input: high.id, high };
    }
    case 'feed':
      if (below === 'ground') return { kind: 'feed-and-ground', high };
      return below === 'sink' ? { kind: 'feed-and-sink', job: jobAt(low), high } : undefined;
    default:
      return undefined;
  }
}

function fromSupply<P extends OnPin>(high: P, low: P): Across<P> | undefined {
  const volts = high.signal.volts ?? 0;
  switch (low.signal.nature) {
    case 'ground':
      return { kind: 'supply-and-ground', volts, high, low };
    case 'supply':
      if ((low.signal.volts ?? 0) >= volts) return undefined;
      return { kind: 'two-supplies', volts, high, low };
    case 'sink':
    case 'input':
    case 'output':
    case 'data':
    case 'analogue':
      return { kind: 'supply-and-signal', volts, high, low };
    default:
      return undefined;
  }
}
