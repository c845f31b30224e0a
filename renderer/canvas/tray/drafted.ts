import type { Mm } from '../../../boards/base/units';
import type { FanPlace, Tray } from '../../../boards/document/tray';
import { hasPaths, type TrayPlace, trayPlaces, withPlaces } from '../../../boards/document/tray-places';
import type { Point, Rect } from '../../../boards/drawing/geometry';
import type { TrayDraft, TrayPart } from '../../store/session';
import { edgeOfWall } from './fan-shapes';

/** The tray as it would be with what is on its way. */
export function draftedTray(tray: Tray, draft: TrayDraft | null): Tray {
  switch (draft?.kind) {
    case 'place': {
      const { place } = draft;
      return withPlaces(
        tray,
        trayPlaces(tray).map((each) => (each.place.id === place.place.id ? place : each)),
      );
    }
    case 'new':
      return withPlaces(tray, [...trayPlaces(tray), draft.place]);
    case 'board':
      return { ...tray, board: draft.board };
    default:
      return tray;
  }
}

/** Whether paths lead to a part of the tray. */
export function isStation({ kind }: TrayPart): boolean {
  return kind !== 'path' && kind !== 'board' && hasPaths(kind);
}

/** No tray is made, and no ruler read, more closely than this; adding nought turns minus nought into nought. */
export function hundredths(mm: Mm): Mm {
  return Math.round(mm * 100) / 100 + 0;
}

/** The farthest from its corner that a sheet can hold anything. */
const FARTHEST_MM: Mm = 2_000;

export function within(mm: Mm): Mm {
  return hundredths(Math.min(FARTHEST_MM, Math.max(-FARTHEST_MM, mm)));
}

/** The rectangle of a place as the sheet has it, nothing wide for a point; undefined for a fan, which has a wall. */
export function rectOfPlace(each: TrayPlace): Rect | undefined {
  switch (each.what) {
    case 'fan':
      return undefined;
    case 'point':
    case 'standoff':
      return { x: each.place.xMm, y: each.place.yMm, width: 0, height: 0 };
    default: {
      const { xMm, yMm, widthMm, heightMm } = each.place;
      return { x: xMm, y: yMm, width: widthMm, height: heightMm };
    }
  }
}

/** A place in another one; a fan stays in its wall. */
export function placeAt(each: TrayPlace, { x, y }: Point): TrayPlace {
  const at = { xMm: within(x), yMm: within(y) };
  switch (each.what) {
    case 'fan':
      return each;
    case 'point':
      return { what: 'point', place: { ...each.place, ...at } };
    case 'standoff':
      return { what: 'standoff', place: { ...each.place, ...at } };
    case 'opening':
      return { what: 'opening', place: { ...each.place, ...at } };
    case 'bay':
      return { what: 'bay', place: { ...each.place, ...at } };
    case 'supply':
      return { what: 'supply', place: { ...each.place, ...at } };
  }
}

/** Opening, bay or supply with another rectangle; anything else stays. */
export function placeWith(each: TrayPlace, { x, y, width, height }: Rect): TrayPlace {
  const area = { xMm: within(x), yMm: within(y), widthMm: size(width), heightMm: size(height) };
  switch (each.what) {
    case 'opening':
      return { what: 'opening', place: { ...each.place, ...area } };
    case 'bay':
      return { what: 'bay', place: { ...each.place, ...area } };
    case 'supply':
      return { what: 'supply', place: { ...each.place, ...area } };
    default:
      return each;
  }
}

/** Nothing is drawn smaller than a millimetre, nor larger than a sheet can hold. */
function size(mm: Mm): Mm {
  return hundredths(Math.min(FARTHEST_MM, Math.max(1, mm)));
}

/** The wall whose edge of the tray is nearest to a point of the sheet. */
export function nearestWall(tray: Tray, { x, y }: Point): FanPlace['wall'] {
  const { widthMm, heightMm, board } = tray;
  const away = { top: y, bottom: heightMm - y, left: x, right: widthMm - x };
  const walls = (['rear', 'front', 'top', 'bottom'] as const).map((wall) => ({
    wall,
    away: away[edgeOfWall(wall, board?.rear)],
  }));
  return walls.toSorted((a, b) => a.away - b.away)[0]?.wall ?? 'rear';
}
