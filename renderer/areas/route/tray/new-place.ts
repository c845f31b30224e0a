import type { Mm } from '../../../../boards/base/units';
import type { Tray } from '../../../../boards/document/tray';
import { type TrayPlace, trayPlaces } from '../../../../boards/document/tray-places';
import { type Point, type Rect, rectAbout, rectRound } from '../../../../boards/drawing/geometry';
import { nearestWall, placeWith, within } from '../../../canvas/tray/drafted';
import { freshId } from '../../../files/file-name';
import type { TrayTool } from '../../../store/session';

/** What an area is made as where nobody draws it: sizes to begin with, to be measured (from memory). */
const USUAL_SIZES = {
  opening: { width: 40, height: 24 },
  /** A drive of 3.5 inches lies with its long side in sight: 147 mm by 26 mm (SFF-8301, from memory). */
  bay: { width: 147, height: 26 },
  /** A supply unit seen from the side: 86 mm high, and usually 150 mm long (from memory). */
  supply: { width: 150, height: 86 },
} as const satisfies Record<string, { readonly width: Mm; readonly height: Mm }>;

/** A place as a tool makes it: about a point of the sheet, or over the rectangle between two. */
export function newPlace(tray: Tray, tool: TrayTool, from: Point, to: Point | null): TrayPlace | undefined {
  const taken = new Set(trayPlaces(tray).map(({ place }) => place.id));
  const id = freshId(tool, 'place', taken);
  const at = { xMm: within((to ?? from).x), yMm: within((to ?? from).y) };
  switch (tool) {
    case 'choose':
    case 'path':
      return undefined;
    case 'tie':
    case 'bend':
    case 'end':
      return { what: 'point', place: { id, kind: tool, ...at } };
    case 'standoff':
      return { what: 'standoff', place: { id, ...at } };
    case 'fan':
      return { what: 'fan', place: { id, wall: nearestWall(tray, to ?? from) } };
    case 'opening':
      return placeWith(
        {
          what: 'opening',
          place: { id, xMm: 0, yMm: 0, widthMm: 1, heightMm: 1, edge: 'grommet' },
        },
        areaOf(tool, from, to),
      );
    case 'bay':
      return placeWith(
        { what: 'bay', place: { id, xMm: 0, yMm: 0, widthMm: 1, heightMm: 1 } },
        areaOf(tool, from, to),
      );
    case 'supply':
      return placeWith(
        { what: 'supply', place: { id, xMm: 0, yMm: 0, widthMm: 1, heightMm: 1 } },
        areaOf(tool, from, to),
      );
  }
}

function areaOf(tool: keyof typeof USUAL_SIZES, from: Point, to: Point | null): Rect {
  if (to !== null) return rectRound([from, to]);
  const { width, height } = USUAL_SIZES[tool];
  return rectAbout(from, width, height);
}

/** The straight way between two places, as long as it is drawn, to begin with: a path is measured. */
export function straightMm(line: readonly [Point, Point]): Mm {
  const [from, to] = line;
  return Math.max(1, Math.round(Math.hypot(to.x - from.x, to.y - from.y)));
}
