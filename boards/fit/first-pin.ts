import type { Connector, Place } from '../document/connector';
import { gridIndex } from '../document/numbering';
import { hundredths, movedPlace } from './board-place';
import { cellCentre, type Point } from './geometry';

type Standing = Pick<Connector, 'grid' | 'place'>;

/** The pin that is counted first, and where it stands on the board: what a person lays the ruler to. */
interface FirstPin extends Point {
  readonly label: string;
}

/**
 * Where pin 1 of a connector stands. The sheet keeps where the first cell is, which is another one wherever
 * counting begins in another corner. A grid without any position is told by its first cell.
 */
export function firstPin(connector: Standing): FirstPin {
  const { label, cell } = gridIndex(connector.grid).positions[0] ?? { label: '1', cell: [0, 0] };
  const { xMm, yMm } = cellCentre(connector, cell);
  return { label, xMm: hundredths(xMm), yMm: hundredths(yMm) };
}

/** The place of a connector whose pin 1 comes to stand so far from the edges; what is left out stays. */
export function placeByFirstPin(connector: Standing, to: Partial<Point>): Place {
  const { xMm, yMm } = firstPin(connector);
  return movedPlace(connector.place, (to.xMm ?? xMm) - xMm, (to.yMm ?? yMm) - yMm);
}
