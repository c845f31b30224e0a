import type { Mm } from '../base/units';
import { type Frame, further, outward, type Span, type WayOut } from './frame';
import type { Rect } from './geometry';
import { shortened, wrapped } from './lines-of-text';
import type { Measure } from './measure';
import { SIZES } from './sizes';

/** A pin's name, set in its own cell outside the shell. */
export interface NameShape {
  readonly pin: string;
  /** The whole name, also where only a part of it is drawn. */
  readonly full: string;
  readonly lines: readonly string[];
  readonly sizeMm: Mm;
  /** Turned to read from bottom to top. */
  readonly upright: boolean;
  /** Where a line begins within the box, in reading direction. */
  readonly align: 'start' | 'center' | 'end';
  readonly box: Rect;
}

/** A name to be set, with the room it has along the edge; the wires' lane is already taken off. */
export interface NameCell {
  readonly pin: string;
  readonly text: string;
  readonly room: Span;
  /** The pin's own place along the edge; a name stands over it where it can. */
  readonly middle: Mm;
}

interface Setting {
  readonly sizeMm: Mm;
  readonly upright: boolean;
  readonly lines: readonly (readonly string[])[];
}

const STEPS = [SIZES.name, (SIZES.name + SIZES.nameLeast) / 2, SIZES.nameLeast] as const;
const MOST_LINES = 3;

function lineRoom(extent: Mm, sizeMm: Mm): number {
  return Math.min(MOST_LINES, Math.floor((extent + 1e-9) / (sizeMm * SIZES.lineHeight)));
}

function attempt(
  cells: readonly NameCell[],
  sizeMm: Mm,
  upright: boolean,
  lineWidth: Mm,
  mostLines: number,
  measure: Measure,
): Setting | undefined {
  if (mostLines < 1) return undefined;
  const lines: (readonly string[])[] = [];
  for (const cell of cells) {
    const set = wrapped(cell.text, (line) => measure(line, sizeMm, 'text') <= lineWidth, mostLines);
    if (!set) return undefined;
    lines.push(set);
  }
  return { sizeMm, upright, lines };
}

/**
 * One setting for all names of an edge. In this order: wrap, a smaller type, upright, the smallest
 * type, an ellipsis. On the sides of a tall block lines already run outward, so nothing is turned.
 */
function settingFor(cells: readonly NameCell[], tall: boolean, measure: Measure): Setting {
  const room = Math.min(...cells.map((cell) => cell.room.to - cell.room.from));
  const reach = SIZES.nameReach;
  if (!tall) {
    for (const size of STEPS) {
      const set = attempt(cells, size, false, room, MOST_LINES, measure);
      if (set) return set;
    }
  }
  for (const size of [...STEPS, SIZES.nameSmallest]) {
    const set = attempt(cells, size, !tall, reach, lineRoom(room, size), measure);
    if (set) return set;
  }
  const size = Math.min(SIZES.nameLeast, room / SIZES.lineHeight);
  const lines = cells.map((cell) => [shortened(cell.text, reach, size, 'text', measure)]);
  return { sizeMm: size, upright: !tall, lines };
}

/** Sets the names of one edge, outward from `edge`. Every name stays in its own cell, so none can meet. */
export function namesAlong(
  cells: readonly NameCell[],
  frame: Frame,
  way: WayOut,
  edge: Mm,
  measure: Measure,
): readonly NameShape[] {
  const named = cells.filter((cell) => cell.text !== '');
  if (named.length === 0) return [];
  const { sizeMm, upright, lines } = settingFor(named, frame.tall, measure);
  return named.map((cell, index) => {
    const set = lines[index] ?? [];
    const width = Math.max(...set.map((line) => measure(line, sizeMm, 'text')));
    const height = set.length * sizeMm * SIZES.lineHeight;
    const linesRunOut = upright || frame.tall;
    const alongSize = linesRunOut ? height : width;
    const from = Math.min(Math.max(cell.middle - alongSize / 2, cell.room.from), cell.room.to - alongSize);
    const nearest = upright ? 'start' : 'end';
    const farthest = upright ? 'end' : 'start';
    return {
      pin: cell.pin,
      full: cell.text,
      lines: set,
      sizeMm,
      upright,
      align: linesRunOut ? (way === 'before' ? nearest : farthest) : 'center',
      box: frame.rect({ from, to: from + alongSize }, outward(way, edge, linesRunOut ? width : height)),
    };
  });
}

/** How far out a row of names reaches; the edge itself when there are none. */
export function namesReach(names: readonly NameShape[], frame: Frame, way: WayOut, edge: Mm): Mm {
  return names.reduce(
    (reach, name) => {
      const span = frame.outSpan(name.box);
      return way === 'before' ? Math.min(reach, span.from) : Math.max(reach, span.to);
    },
    further(way, edge, 0),
  );
}
