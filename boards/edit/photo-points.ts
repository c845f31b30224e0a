import type { BoardSheet } from '../document/board-sheet';
import type { Build } from '../document/build';
import type { Connector } from '../document/connector';
import { gridIndex } from '../document/numbering';
import type { Photo, PhotoPoint } from '../document/photo';
import { sameSize } from './compare/match-connectors';
import { same } from './same';

/**
 * The build with its photos' points brought after a change of its connectors, whatever the command was. A
 * point shows where a position of the grid is seen, so it keeps its position when that gets another label;
 * in a grid of another size it keeps its label, as all that is known of pins does. It goes with its connector
 * or its position. A board that came with photos of its own stays as it is.
 */
export function withFollowingPoints(before: Build, after: Build): Build {
  const board = followed(before.board, after.board);
  return board === after.board ? after : { ...after, board };
}

/** The same of a board alone. */
export function followed(before: BoardSheet, after: BoardSheet): BoardSheet {
  const { photos } = after;
  if (photos === undefined || photos !== before.photos || after.connectors === before.connectors)
    return after;
  const [old, now] = [byId(before.connectors), byId(after.connectors)];
  const next = photos.map((photo) => photoAfter(photo, old, now));
  return next.every((photo, at) => photo === photos[at]) ? after : { ...after, photos: next };
}

type ById = ReadonlyMap<string, Connector>;

function byId(connectors: readonly Connector[]): ById {
  return new Map(connectors.map((connector) => [connector.id, connector]));
}

function photoAfter(photo: Photo, old: ById, now: ById): Photo {
  const points = photo.points.flatMap((point) => pointAfter(point, old, now));
  return same(points, photo.points) ? photo : { ...photo, points };
}

function pointAfter(point: PhotoPoint, old: ById, now: ById): readonly PhotoPoint[] {
  const [before, after] = [old.get(point.connector), now.get(point.connector)];
  if (after === undefined) return [];
  if (before === undefined || before.grid === after.grid) return [point];
  const cell = gridIndex(sameSize(before, after) ? before.grid : after.grid).cellOf(point.pin);
  const pin = cell && gridIndex(after.grid).labelAt(cell);
  return pin === undefined ? [] : [{ ...point, pin }];
}
