import { megabytes } from '../../base/megabytes';
import type { BoardSheet } from '../board-sheet';
import type { Connector } from '../connector';
import { LIMITS } from '../limits';
import { gridIndex } from '../numbering';
import type { Photo } from '../photo';
import type { ProblemList } from '../problem/problem-list';
import { shownText } from '../problem/shown-value';
import { Once } from './once';

/** Photos have ids of their own, are not too much together, and point at pins that are there, each once. */
export function checkPhotos({ photos = [], connectors }: BoardSheet, path: string, list: ProblemList): void {
  const length = photos.reduce((sum, { data }) => sum + data.length, 0);
  if (length > LIMITS.photosLength) {
    list.add(() => ({
      path,
      expected: `pictures of at most ${megabytes(bytesIn(LIMITS.photosLength))} in all`,
      found: megabytes(bytesIn(length)),
    }));
    return;
  }
  const byId = new Map(connectors.map((connector) => [connector.id, connector]));
  const ids = new Once('an id', list);
  photos.forEach((photo, at) => {
    ids.enter(photo.id, `${path}[${at}].id`);
    checkPoints(photo, byId, `${path}[${at}].points`, list);
  });
}

function checkPoints(
  { points, widthPx, heightPx }: Photo,
  connectors: ReadonlyMap<string, Connector>,
  path: string,
  list: ProblemList,
): void {
  const once = new Once('a pin', list);
  points.forEach(({ connector: id, pin, xPx, yPx }, at) => {
    const here = `${path}[${at}]`;
    const connector = connectors.get(id);
    if (connector === undefined)
      list.add(() => ({
        path: `${here}.connector`,
        expected: 'a connector of the board that is there',
        found: shownText(id),
      }));
    else if (gridIndex(connector.grid).cellOf(pin) === undefined)
      list.add(() => ({
        path: `${here}.pin`,
        expected: `a label that the grid of ${shownText(id)} counts`,
        found: shownText(pin),
      }));
    else once.enter(`${id} / ${pin}`, `${here}.pin`);
    if (xPx > widthPx || yPx > heightPx)
      list.add(() => ({
        path: here,
        expected: `a place in the picture of ${widthPx} × ${heightPx} pixels`,
        found: `${xPx}, ${yPx}`,
      }));
  });
}

/** How many bytes so many letters of base64 stand for. */
function bytesIn(letters: number): number {
  return (letters * 3) / 4;
}
