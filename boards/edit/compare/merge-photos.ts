import type { BoardSheet } from '../../document/board-sheet';
import type { Connector } from '../../document/connector';
import { gridIndex } from '../../document/numbering';
import type { Photo, PhotoPoint } from '../../document/photo';
import { followed } from '../photo-points';
import type { BoardComparison } from './compare-boards';
import { freeId, type Take } from './taking';

/** Where a connector of theirs has come to be in the merged sheet, and what its pins are called there. */
export interface Home {
  readonly connector: string;
  readonly labelOf: (label: string) => string | undefined;
}

/**
 * The pictures of both sheets, with what they point at. A picture that both have stands once, with the
 * points of either; a point whose pin is not in the merged sheet goes.
 */
export function mergePhotos(
  { mine, theirs }: BoardComparison,
  take: Take,
  connectors: readonly Connector[],
  homes: ReadonlyMap<string, Home>,
): readonly Photo[] {
  const own = followed(mine, { ...mine, connectors: [...connectors] }).photos ?? [];
  if (take === 'mine') return own;
  const found = new Map(connectors.map((connector) => [connector.id, connector]));
  const others = (theirs.photos ?? []).map((photo) => ({ ...photo, points: moved(photo, homes, found) }));
  return take === 'theirs' ? others : bothPhotos(own, others);
}

function bothPhotos(own: readonly Photo[], others: readonly Photo[]): readonly Photo[] {
  const ids = new Set(own.map(({ id }) => id));
  const merged = own.map((photo) => {
    const other = others.find((each) => samePicture(each, photo));
    return other === undefined ? photo : { ...photo, points: once([...photo.points, ...other.points]) };
  });
  const further = others.filter((photo) => !own.some((each) => samePicture(each, photo)));
  return [...merged, ...further.map((photo) => ({ ...photo, id: freeId(photo.id, ids) }))];
}

function samePicture(a: Photo, b: Photo): boolean {
  return a.data === b.data && a.type === b.type && a.widthPx === b.widthPx && a.heightPx === b.heightPx;
}

function moved(
  { points }: Photo,
  homes: ReadonlyMap<string, Home>,
  found: ReadonlyMap<string, BoardSheet['connectors'][number]>,
): PhotoPoint[] {
  return once(
    points.flatMap((point): PhotoPoint[] => {
      const home = homes.get(point.connector);
      const pin = home?.labelOf(point.pin);
      const connector = home && found.get(home.connector);
      if (connector === undefined || pin === undefined) return [];
      return gridIndex(connector.grid).cellOf(pin) ? [{ ...point, connector: connector.id, pin }] : [];
    }),
  );
}

/** Each pin is pointed at once in a picture; what was said first stands. */
function once(points: readonly PhotoPoint[]): PhotoPoint[] {
  return points.filter(
    ({ connector, pin }, at) =>
      points.findIndex((other) => other.connector === connector && other.pin === pin) === at,
  );
}
