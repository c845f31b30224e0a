import { byIdentity } from '../../base/by-identity';
import type { Mm } from '../../base/units';
import type { NoPassage } from '../fill/fill';
import type { AsLaid, LaidRun } from './as-laid';
import type { NotLaid } from './laying-of';

/** What is to be said of a run first. */
export type RunVerdict =
  | { readonly kind: 'laid'; readonly spareMm: Mm }
  | { readonly kind: 'too-short'; readonly byMm: Mm }
  /** An opening of its way does not let it through, whatever else is in it. */
  | { readonly kind: 'barred'; readonly opening: string; readonly problem: NoPassage }
  /** An opening of its way holds more than it has room for. */
  | { readonly kind: 'crowded'; readonly opening: string }
  | { readonly kind: 'open'; readonly broken: boolean }
  | { readonly kind: 'not-laid'; readonly problem: NotLaid };

/** The worst of what is so of a run. */
export function verdictOf(laid: AsLaid, { state }: LaidRun): RunVerdict {
  if (state.kind !== 'laid') return state;
  const { route, barred } = state;
  const [first] = barred;
  if (first !== undefined) return { kind: 'barred', ...first };
  if (route.spareMm < 0) return { kind: 'too-short', byMm: -route.spareMm };
  const full = overfull(laid);
  const crowded = route.openings.find((opening) => full.has(opening));
  return crowded === undefined
    ? { kind: 'laid', spareMm: route.spareMm }
    : { kind: 'crowded', opening: crowded };
}

const overfull = byIdentity(
  ({ openings }: AsLaid): ReadonlySet<string> =>
    new Set(openings.filter(({ over }) => over !== undefined).map(({ opening }) => opening.id)),
);
