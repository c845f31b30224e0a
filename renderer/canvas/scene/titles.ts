import type { Mm } from '../../../boards/base/units';
import type { Block } from '../../../boards/drawing/block';
import type { Point, Rect } from '../../../boards/drawing/geometry';
import { shortened } from '../../../boards/drawing/lines-of-text';
import type { Measure } from '../../../boards/drawing/measure';
import { SIZES } from '../../../boards/drawing/sizes';
import type { Obstacles } from './obstacles';

/** A connector's print and title, outside everything that belongs to it. */
export interface TitleShape {
  readonly connector: string;
  readonly print: string;
  /** What it is in words; left out where only the print has room. */
  readonly title?: string;
  readonly box: Rect;
}

const STEP: Mm = 0.3;
const FURTHEST: Mm = 9;
const GAP: Mm = 0.35;
const LINE = SIZES.title * 1.15;
const SECOND_LINE = SIZES.subtitle * 1.25;

/**
 * Places a title: above, as near as what is wired there lets it; else below, right, left; first with
 * both lines, then with the print alone. Undefined when everything about the connector is taken.
 */
export function titleOf(block: Block, standing: Obstacles, measure: Measure): TitleShape | undefined {
  const { print, title, id } = block.connector;
  const widest = Math.max(block.shell.width, 9);
  const first = shortened(print, widest, SIZES.title, 'strong', measure);
  const second = shortened(title, widest, SIZES.subtitle, 'text', measure);
  const firstWidth = measure(first, SIZES.title, 'strong');
  const both = Math.max(firstWidth, measure(second, SIZES.subtitle, 'text'));
  const sizes = [
    ...(second === '' ? [] : [{ width: both, height: LINE + SECOND_LINE, title: second }]),
    { width: firstWidth, height: LINE, title: undefined },
  ];
  for (const size of sizes)
    for (const corner of corners(block, size)) {
      const box = { ...corner, width: size.width, height: size.height };
      if (!standing.free([box], () => true)) continue;
      standing.add(box, { kind: 'title', of: id });
      const shape = { connector: id, print: first, box };
      return size.title === undefined ? shape : { ...shape, title: size.title };
    }
  return undefined;
}

function* corners(
  { shell, bounds }: Block,
  { width, height }: { readonly width: Mm; readonly height: Mm },
): Generator<Point> {
  for (let beyond = GAP; beyond < FURTHEST; beyond += STEP)
    yield { x: shell.x, y: bounds.y - beyond - height };
  for (let beyond = GAP; beyond < FURTHEST; beyond += STEP)
    yield { x: shell.x, y: bounds.y + bounds.height + beyond };
  for (let beyond = GAP; beyond < FURTHEST; beyond += STEP)
    yield { x: bounds.x + bounds.width + beyond, y: shell.y };
  for (let beyond = GAP; beyond < FURTHEST; beyond += STEP)
    yield { x: bounds.x - beyond - width, y: shell.y };
}
