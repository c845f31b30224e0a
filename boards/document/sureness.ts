import type { Alternative, Pin } from './connector';

/** How surely a pin is known, from not at all to for sure; "unsaid" where nobody put a number to it. */
export type Sureness = 'unknown' | 'guessed' | 'likely' | 'unsaid' | 'fairly' | 'sure';

/** From which confidence on a reading is called so. */
export const LEAST = { sure: 0.95, fairly: 0.75, likely: 0.5 } as const;

/** How surely it is known what a pin does, or that none stands there. */
export function surenessOf({ missing, signal, source, confidence }: Pin): Sureness {
  if (!missing && (signal === undefined || signal === 'unknown')) return 'unknown';
  if (source?.kind === 'guessed') return 'guessed';
  if (confidence === undefined) return 'unsaid';
  if (confidence >= LEAST.sure) return 'sure';
  if (confidence >= LEAST.fairly) return 'fairly';
  return confidence >= LEAST.likely ? 'likely' : 'guessed';
}

/** What other sources say of a pin that is not what it is taken for. */
export function contradictions(pin: Pin): readonly Alternative[] {
  return (pin.alternatives ?? []).filter(
    ({ signal, missing = false, channel }) =>
      missing !== (pin.missing ?? false) ||
      (!missing && signal !== (pin.signal ?? 'unknown')) ||
      (channel !== undefined && pin.channel !== undefined && channel !== pin.channel),
  );
}
