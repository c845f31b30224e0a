import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Connector } from '../../../boards/document/connector';
import type { Point } from '../../../boards/drawing/geometry';
import { measureByTable } from '../../../boards/drawing/measure';
import type { Letters } from '../../../boards/handover/page/letters';
import type { Drawn, DrawnText, Page, Paper } from '../../../boards/handover/page/page';
import { type PinoutOptions, PLAIN_OPTIONS } from '../../../boards/handover/pinout/options';
import { pinoutPaper } from '../../../boards/handover/pinout/pinout-paper';

/** The layout's own table of widths, and a font that has every sign. */
export const ANY_LETTERS: Letters = { measure: measureByTable, has: () => true };

export const DAY = '26 November 2026';

export function boardWith(connectors: readonly Connector[], name = 'Test board'): BoardSheet {
  return {
    format: 'leadwright/board',
    version: 1,
    id: 'test',
    name,
    outline: { widthMm: 244, depthMm: 244 },
    connectors: [...connectors],
  };
}

export function printed(
  board: BoardSheet,
  options: Partial<PinoutOptions> = {},
  letters: Letters = ANY_LETTERS,
): Paper {
  const paper = pinoutPaper(board, { ...PLAIN_OPTIONS, ...options }, DAY, letters);
  if (!paper.ok) throw new Error(JSON.stringify(paper.problem));
  return paper.value;
}

interface Placement {
  readonly at: Point;
  readonly scale: number;
}

/** Something drawn, with where it comes to lie on the page. */
export interface Found<T extends Drawn> {
  readonly item: T;
  readonly at: (point: Point) => Point;
  readonly scale: number;
}

/** Everything on a page, out of its groups. */
export function everythingOn(page: Page): readonly Found<Drawn>[] {
  const found: Found<Drawn>[] = [];
  const look = (items: readonly Drawn[], { at, scale }: Placement) => {
    for (const item of items) {
      const place = (point: Point) => ({ x: at.x + point.x * scale, y: at.y + point.y * scale });
      found.push({ item, at: place, scale });
      if (item.kind !== 'group') continue;
      look(item.items, { at: place(item.at ?? { x: 0, y: 0 }), scale: scale * (item.scale ?? 1) });
    }
  };
  look(page.items, { at: { x: 0, y: 0 }, scale: 1 });
  return found;
}

export function textsOn(page: Page): readonly Found<DrawnText>[] {
  return everythingOn(page).filter((found): found is Found<DrawnText> => found.item.kind === 'text');
}

export function wordsOn(paper: Paper): readonly string[] {
  return paper.pages.flatMap((page) => textsOn(page).map(({ item }) => item.text));
}

/** The middle of every pin's square on a page, by its label, one list for each connector drawn there. */
export function pinsOn(page: Page): ReadonlyMap<string, Point> {
  const pins = new Map<string, Point>();
  for (const { item, at } of everythingOn(page)) {
    if (item.kind !== 'group' || item.title === undefined) continue;
    const label = /^Pin (\S+): /.exec(item.title)?.[1];
    const square = item.items[0];
    if (label === undefined || square?.kind !== 'rect') continue;
    const { x, y, width, height } = square.box;
    pins.set(label, at({ x: x + width / 2, y: y + height / 2 }));
  }
  return pins;
}

/** Labels as they lie on paper, row by row from the top, read from the left. */
export function seenOnPaper(pins: ReadonlyMap<string, Point>): readonly string[] {
  const rows = new Map<number, { readonly label: string; readonly x: number }[]>();
  for (const [label, { x, y }] of pins) {
    const row = Math.round(y * 10);
    rows.set(row, [...(rows.get(row) ?? []), { label, x }]);
  }
  return [...rows]
    .sort(([a], [b]) => a - b)
    .map(([, row]) =>
      row
        .toSorted((a, b) => a.x - b.x)
        .map(({ label }) => label)
        .join(' '),
    );
}

interface Span {
  readonly from: Point;
  readonly to: Point;
}

/** The room that something drawn takes on its page, its pen left out; a group takes what its things take. */
function roomOf({ item, at, scale }: Found<Drawn>): Span | undefined {
  switch (item.kind) {
    case 'line':
      return round([at(item.from), at(item.to)]);
    case 'rect': {
      const { x, y, width, height } = item.box;
      return round([at({ x, y }), at({ x: x + width, y: y + height })]);
    }
    case 'shape':
      return item.points.length === 0 ? undefined : round(item.points.map(at));
    case 'circle': {
      const { centre, radiusMm: r } = item;
      return round([at({ x: centre.x - r, y: centre.y - r }), at({ x: centre.x + r, y: centre.y + r })]);
    }
    case 'text': {
      const { x, y } = at(item.at);
      const [wide, high] = [item.widthMm * scale, item.sizeMm * scale];
      const from = { start: 0, middle: 0.5, end: 1 }[item.anchor] * wide;
      return item.upright
        ? { from: { x: x - high, y: y + from - wide }, to: { x, y: y + from } }
        : { from: { x: x - from, y: y - high }, to: { x: x - from + wide, y } };
    }
    case 'group':
      return undefined;
  }
}

function round(points: readonly Point[]): Span {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return {
    from: { x: Math.min(...xs), y: Math.min(...ys) },
    to: { x: Math.max(...xs), y: Math.max(...ys) },
  };
}

/** Everything that comes nearer to the edge of its page than so many millimetres, told by what it is. */
export function nearerToEdge(paper: Paper, edgeMm: number): readonly string[] {
  const { widthMm, heightMm } = paper.size;
  return paper.pages.flatMap((page, index) =>
    everythingOn(page).flatMap((found) => {
      const room = roomOf(found);
      if (!room) return [];
      const { from, to } = room;
      const inside =
        from.x >= edgeMm && from.y >= edgeMm && to.x <= widthMm - edgeMm && to.y <= heightMm - edgeMm;
      const what = found.item.kind === 'text' ? found.item.text : found.item.kind;
      return inside ? [] : [`page ${index + 1}: ${what} from ${from.x} ${from.y} to ${to.x} ${to.y}`];
    }),
  );
}
