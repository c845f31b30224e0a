import type { Laying } from '../../../../boards/routing/fill/laying';
import type { AllRoutes, RoutingProgress } from '../../../../boards/routing/search/all-routes';
import type { Route } from '../../../../boards/routing/search/reach';

/** What the worker is asked once. */
export interface LayingAsk {
  readonly laying: Laying;
  /** Ways that are not to be changed, by the id of their run. */
  readonly pinned: ReadonlyMap<string, Route>;
}

/** What it says on the way; the last is what it found. */
export type LayingTold =
  | { readonly kind: 'progress'; readonly progress: RoutingProgress }
  | { readonly kind: 'found'; readonly found: AllRoutes };
