import type { Pin } from '../document/connector';
import type { Grid } from '../document/grid';
import { gridIndex } from '../document/numbering';

/** Pins in the order in which the grid counts them. */
export function inCountingOrder(grid: Grid, pins: readonly Pin[]): Pin[] {
  const order = new Map(gridIndex(grid).positions.map(({ label }, place) => [label, place]));
  return pins.toSorted((a, b) => (order.get(a.pin) ?? 0) - (order.get(b.pin) ?? 0));
}
