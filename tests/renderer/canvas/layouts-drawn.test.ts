import { describe, expect, it } from 'vitest';
import { TURNS } from '../../../boards/base/units';
import type { Block } from '../../../boards/drawing/block';
import { overlap } from '../../../boards/drawing/geometry';
import { measureByTable } from '../../../boards/drawing/measure';
import { sceneOf } from '../../../renderer/canvas/scene/scene-of';
import { entered } from '../../boards/pinout/layouts/entered';
import { KNOWN_LAYOUTS, type Layout } from '../../boards/pinout/layouts/known-layouts';
import { STRANGE_LAYOUTS } from '../../boards/pinout/layouts/strange-layouts';

const LAYOUTS = [...KNOWN_LAYOUTS, ...STRANGE_LAYOUTS].map((layout) => [layout.name, layout] as const);

const VIEWS = TURNS.flatMap((turn) => [false, true].map((mirrored) => ({ turn, mirrored })));

/** The layout in all eight orientations. */
function drawn(layout: Layout): readonly Block[] {
  const build = entered(layout);
  return VIEWS.flatMap((view) => sceneOf(build, { view, measure: measureByTable }).blocks);
}

/** Labels of the pins of the outermost rows: names stand beside those; inner rows have no room for any. */
function outermost({ grid }: Layout, labels: readonly string[], at: Block): readonly string[] {
  const inner = new Set(
    Math.min(grid.rows, grid.cols) <= 2
      ? []
      : at.grid.positions.flatMap(({ label, row, col }) => {
          const place = at.frame.tall ? col : row;
          const last = (at.frame.tall ? at.grid.cols : at.grid.rows) - 1;
          return place > 0 && place < last ? [label] : [];
        }),
  );
  return labels.filter((label) => !inner.has(label));
}

function pairsThatOverlap(boxes: readonly { readonly of: string; readonly box: Block['shell'] }[]) {
  return boxes.flatMap((a, at) =>
    boxes.slice(at + 1).flatMap((b) => (overlap(a.box, b.box) ? [`${a.of} and ${b.of}`] : [])),
  );
}

describe.each(LAYOUTS)('%s as it is drawn', (_, layout) => {
  const labels = layout.pins.map(([label]) => label).toSorted();
  const blocks = drawn(layout);

  it('has a shape for every pin, in all eight orientations', () => {
    expect(blocks).toHaveLength(VIEWS.length);
    for (const { pins } of blocks) expect(pins.map(({ pin }) => pin).toSorted()).toEqual(labels);
  });

  it('has a name for every pin of its outermost rows', () => {
    for (const block of blocks) {
      const named = block.names.map(({ pin }) => pin).toSorted();
      expect(named).toEqual(outermost(layout, labels, block));
      expect(block.names.every(({ lines }) => lines.join('').trim() !== '')).toBe(true);
    }
  });

  it('has nothing that lies over another', () => {
    for (const { pins, names } of blocks) {
      expect(
        pairsThatOverlap([
          ...pins.map(({ pin, box }) => ({ of: `pin ${pin}`, box })),
          ...names.map(({ pin, box }) => ({ of: `name ${pin}`, box })),
        ]),
      ).toEqual([]);
    }
  });
});
