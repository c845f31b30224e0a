import type { Joint } from '../fit/joints';
import { couldSuit } from '../fit/match';
import { partKindOf } from '../signals/part-kinds';
import type { Unsure } from './finding-data';

/** Below this a pin's meaning is hearsay: read in one place, or from memory. */
const RELIABLE = 0.7;

/** Why a wire lies on a pin whose meaning is not sure; undefined where it is, or makes no difference to the wire. */
export function unsureBecause({ pin, part, terminal }: Joint): Unsure | undefined {
  if (!pin) return undefined;
  if (pin.signal === undefined || pin.signal === 'unknown') return 'unknown';
  if (pin.source?.kind === 'guessed') return 'guessed';
  if (pin.confidence !== undefined && pin.confidence < RELIABLE) return 'low-confidence';
  if (!part || !terminal) return undefined;
  const kind = partKindOf(part.kind);
  const otherwise = pin.alternatives?.some(
    ({ signal }) => !couldSuit(kind, { terminal, pin: { ...pin, signal } }),
  );
  return otherwise ? 'sources-disagree' : undefined;
}
