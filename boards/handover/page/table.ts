import type { Mm } from '../../base/units';
import type { Point } from '../../drawing/geometry';
import type { Measure } from '../../drawing/measure';
import type { Piece, Strip } from './flow';
import type { Drawn } from './page';
import { linesOf } from './paragraph';
import { baseline, lineHeight, linesAt, TYPES, type Type } from './type';

export interface Column {
  readonly title: string;
  readonly widthMm: Mm;
  readonly type: Type;
}

const PAD: Mm = 0.85;
/** Kept free between a column's text and the next. */
const BETWEEN: Mm = 2.5;

/**
 * A table as pieces; on every page but its first its head stands again, under what it belongs to.
 *
 * @param place how far from the left of the body, and what stands over the head where it goes on
 * @param rows for each row its cells, in the order of the columns
 */
export function tableOf(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  place: { readonly leftMm: Mm; readonly goesOn: Strip },
  measure: Measure,
): readonly Piece[] {
  const { leftMm } = place;
  const head = rowStrip(
    columns.map(({ title, widthMm }) => ({ text: title, widthMm, type: TYPES.head })),
    leftMm,
    measure,
    0.3,
  );
  const again = under(place.goesOn, head);
  const strips = rows.map((cells) =>
    rowStrip(
      columns.map(({ widthMm, type }, index) => ({ text: cells[index] ?? '', widthMm, type })),
      leftMm,
      measure,
      0.12,
    ),
  );
  return [
    { kind: 'strip', strip: head },
    ...strips.map((strip): Piece => ({ kind: 'strip', strip, head: again })),
  ];
}

/** The line over what goes on on another page; it is cut where it does not fit. */
export function goingOn(words: string, widthMm: Mm, measure: Measure): Strip {
  const type = TYPES.heading;
  const [line = ''] = linesOf(words, widthMm, type, measure);
  return { heightMm: lineHeight(type) + 1, draw: (at) => linesAt([line], at, type, measure) };
}

function under(upper: Strip, lower: Strip): Strip {
  return {
    heightMm: upper.heightMm + lower.heightMm,
    draw: (at, book) => [...upper.draw(at, book), ...lower.draw({ x: at.x, y: at.y + upper.heightMm }, book)],
  };
}

interface Cell {
  readonly text: string;
  readonly widthMm: Mm;
  readonly type: Type;
}

function rowStrip(cells: readonly Cell[], leftMm: Mm, measure: Measure, ruleMm: Mm): Strip {
  const set = cells.map((cell) => ({
    ...cell,
    lines: linesOf(cell.text, cell.widthMm - BETWEEN, cell.type, measure),
  }));
  // All first lines stand on one line, whatever their types.
  const down = Math.max(...set.map(({ type }) => baseline(type)));
  const drops = set.map(({ type }) => down - baseline(type));
  const heights = set.map(({ lines, type }, index) => (drops[index] ?? 0) + lines.length * lineHeight(type));
  const heightMm = Math.max(...heights) + 2 * PAD;
  const widthMm = cells.reduce((sum, cell) => sum + cell.widthMm, 0);
  return {
    heightMm,
    draw: (at) => {
      const left = at.x + leftMm;
      let x = left;
      const drawn: Drawn[] = [rule({ x: left, y: at.y + heightMm }, widthMm, ruleMm)];
      for (const [index, { lines, type, widthMm: width }] of set.entries()) {
        drawn.push(...linesAt(lines, { x, y: at.y + PAD + (drops[index] ?? 0) }, type, measure));
        x += width;
      }
      return drawn;
    },
  };
}

function rule(from: Point, widthMm: Mm, thickMm: Mm): Drawn {
  const ink = thickMm > 0.2 ? 'ink' : 'hair';
  return { kind: 'line', from, to: { x: from.x + widthMm, y: from.y }, stroke: { ink, widthMm: thickMm } };
}
