import type { ObservationId } from './observations';

/** Two things that no machine shows, whatever is wrong with it: a yes to both is a slip of the eye or the ear. */
export type Exclusion = readonly [ObservationId, ObservationId];

/** Pairs that exclude each other by what the questions ask; what may change from one press to the next is none. */
const EXCLUSIONS: readonly Exclusion[] = [
  ['standby-light', 'no-standby-light'],
  ['starts-on-mains', 'no-start-on-mains'],
  ['no-beep', 'beep-code'],
  ['rear-not-muted', 'rear-silent'],
];

/** The pairs of which both were seen. */
export function excludingIn(seen: ReadonlySet<ObservationId>): readonly Exclusion[] {
  return EXCLUSIONS.filter((pair) => pair.every((id) => seen.has(id)));
}

/** What need not be asked any more, since something that was seen excludes it. */
export function excludedBy(seen: ReadonlySet<ObservationId>): ReadonlySet<ObservationId> {
  return new Set(
    EXCLUSIONS.flatMap(([one, other]) => [
      ...(seen.has(one) ? [other] : []),
      ...(seen.has(other) ? [one] : []),
    ]),
  );
}
