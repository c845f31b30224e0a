import type { Connector, Place } from '../document/connector';
import { rowPitchOf } from '../document/grid';
import { gridIndex } from '../document/numbering';
import { hundredths, movedPlace } from './board-place';
import { type Point, turnedPoint } from './geometry';

type Standing = Pick<Connector, 'grid' | 'place'>;

/** The pin that is counted first, and where it stands on the board: what a person lays the ruler to. */
export interface FirstPin extends Point {
  readonly label: string;
}

/**
 * Where pin 1 of a connector stands. The sheet keeps where the first cell is, which is another one wherever
 * counting begins in another corner. A grid without any position is told by its first cell.
 */
export function firstPin({ grid, place }: Standing): FirstPin {
  const { label, cell } = gridIndex(grid).positions[0] ?? { label: '1', cell: [0, 0] };
  const [row, col] = cell;
  const off = turnedPoint({ xMm: col * grid.pitchMm, yMm: row * rowPitchOf(grid) }, place.turn);
  return { label, xMm: hundredths(place.xMm + off.xMm), yMm: hundredths(place.yMm + off.yMm) };
}

/** The place of a connector whose pin 1 comes to stand so far from the edges; what is left out stays. */
export function placeByFirstPin(connector: Standing, to: Partial<Point>): Place {
  const { xMm, yMm } = firstPin(connector);
  return movedPlace(connector.place, (to.xMm ?? xMm) - xMm, (to.yMm ?? yMm) - yMm);
}
