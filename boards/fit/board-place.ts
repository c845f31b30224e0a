import { addTurns, type Turn } from '../base/units';
import type { Connector, Place } from '../document/connector';
import { connectorBox, gridMiddle, type Point, turnedPoint } from './geometry';

/** The middle of a connector on the board. */
export function connectorMiddle({ grid, place }: Pick<Connector, 'grid' | 'place'>): Point {
  const { xMm, yMm } = turnedPoint(gridMiddle(grid), place.turn);
  return { xMm: place.xMm + xMm, yMm: place.yMm + yMm };
}

/** Where a connector stands after it was turned about its own middle, clockwise from above. */
export function turnedPlace({ grid, place }: Pick<Connector, 'grid' | 'place'>, by: Turn): Place {
  const turn = addTurns(place.turn, by);
  const middle = connectorMiddle({ grid, place });
  const first = turnedPoint(gridMiddle(grid), turn);
  return { xMm: hundredths(middle.xMm - first.xMm), yMm: hundredths(middle.yMm - first.yMm), turn };
}

/** A place moved along the board, kept within what a sheet can hold. */
export function movedPlace(place: Place, byXMm: number, byYMm: number): Place {
  return { ...place, xMm: within(place.xMm + byXMm), yMm: within(place.yMm + byYMm) };
}

/** The farthest from the board's corner that a sheet can hold, in millimetres. */
const FARTHEST_MM = 1_000;

function within(value: number): number {
  return hundredths(Math.min(FARTHEST_MM, Math.max(-FARTHEST_MM, value)));
}

/** No board is made, and no ruler read, more closely than this. */
export function hundredths(value: number): number {
  // Adding nought turns minus nought, which no file has, into nought.
  return Math.round(value * 100) / 100 + 0;
}

/** A connector as it would be in another place; its box is what guides and remarks measure. */
export function boxAt(connector: Connector, place: Place) {
  return connectorBox({ ...connector, place });
}
