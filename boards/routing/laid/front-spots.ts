import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Opening, Tray, TraySide } from '../../document/tray';
import { type Box, boardBox } from '../case/board-on-tray';

/** A place of the tray as cables are measured from it. */
export interface Spot {
  readonly id: string;
  readonly xMm: Mm;
  readonly yMm: Mm;
}

/** Where a cable that comes from a connector of the board can go on to. */
interface FrontSpots {
  readonly openings: readonly Spot[];
  readonly points: readonly Spot[];
}

/**
 * Openings, and the points that do not lie behind the tray. What the board covers is none of them, but for
 * points where cables end, such as at a card over it; an opening that it covers in part is where most of it
 * is free. Nor is a point that leads nowhere: one without a path, at which no cable ends.
 *
 * @param ends places where cables end
 */
export function frontSpots({ board }: Build, tray: Tray, ends: ReadonlySet<string>): FrontSpots {
  const { points, openings, paths, board: place } = tray;
  const cover = place && boardBox(board.outline, place);
  const sides = new Map<string, TraySide>();
  for (const { from, to, side } of paths)
    for (const end of [from, to]) if (sides.get(end) !== 'back') sides.set(end, side);
  return {
    openings: openings.flatMap((opening) => openSpot(opening, cover) ?? []),
    points: points.filter(({ id, kind, xMm, yMm }) => {
      const free = kind === 'end' || cover === undefined || !covers(cover, xMm, yMm);
      return free && sides.get(id) !== 'back' && (sides.has(id) || ends.has(id));
    }),
  };
}

function covers({ left, right, top, bottom }: Box, xMm: Mm, yMm: Mm): boolean {
  return xMm > left && xMm < right && yMm > top && yMm < bottom;
}

/** The middle of the largest part of an opening that the board leaves free on one side of it. */
function openSpot({ id, xMm, yMm, widthMm, heightMm }: Opening, cover: Box | undefined): Spot | undefined {
  const whole: Box = { left: xMm, right: xMm + widthMm, top: yMm, bottom: yMm + heightMm };
  const [largest] = (cover === undefined ? [whole] : besides(whole, cover))
    .filter((part) => areaOf(part) > 0)
    .toSorted((a, b) => areaOf(b) - areaOf(a));
  return largest && { id, xMm: (largest.left + largest.right) / 2, yMm: (largest.top + largest.bottom) / 2 };
}

/** What of a box lies to the left, to the right, above and below another. */
function besides(box: Box, other: Box): readonly Box[] {
  return [
    { ...box, right: Math.min(box.right, other.left) },
    { ...box, left: Math.max(box.left, other.right) },
    { ...box, bottom: Math.min(box.bottom, other.top) },
    { ...box, top: Math.max(box.top, other.bottom) },
  ];
}

function areaOf({ left, right, top, bottom }: Box): number {
  return Math.max(0, right - left) * Math.max(0, bottom - top);
}
