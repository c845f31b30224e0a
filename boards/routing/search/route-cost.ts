/**
 * What routes cost, in the order in which it counts: cables that are left without a route, then what is in
 * sight, then length. No sum of the later ones outweighs an earlier one.
 */
export interface RouteCost {
  readonly left: number;
  readonly visibleUm: number;
  readonly totalUm: number;
}

export const NO_ROUTE_COST: RouteCost = { left: 0, visibleUm: 0, totalUm: 0 };

/** What a cable costs that is left. */
export const LEFT_COST: RouteCost = { left: 1, visibleUm: 0, totalUm: 0 };

export function addRouteCosts(one: RouteCost, other: RouteCost): RouteCost {
  return {
    left: one.left + other.left,
    visibleUm: one.visibleUm + other.visibleUm,
    totalUm: one.totalUm + other.totalUm,
  };
}

/** Below 0 where the first is less. */
export function compareRouteCosts(one: RouteCost, other: RouteCost): number {
  return one.left - other.left || one.visibleUm - other.visibleUm || one.totalUm - other.totalUm;
}
