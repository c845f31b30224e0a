import type { Build } from '../../../../boards/document/build';
import type { PlugRef } from '../../../../boards/document/lookup';
import type { SeatingNews } from '../../../../boards/planner/best-seating';
import type { Progress } from '../../../../boards/planner/progress';

/** What the worker is asked once. */
export interface SeatingAsk {
  readonly build: Build;
  readonly pinned: readonly PlugRef[];
}

/** What it says on the way; the last is that all is said. */
export type SeatingTold =
  | SeatingNews
  | { readonly kind: 'progress'; readonly progress: Progress }
  | { readonly kind: 'done' };
