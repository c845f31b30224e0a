import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contains, overlap, type Point, type Rect, rectAbout } from '../../../boards/drawing/geometry';
import { labelsOnTheWay, trayLabels } from '../../../renderer/canvas/tray/tray-labels';
import { traySceneOf } from '../../../renderer/canvas/tray/tray-scene';
import { board } from '../../boards/library/demo-files';
import { anyMap } from './any-map';

const TYPE_PX = 15;
const scale = fc.noBias(fc.integer({ min: 40, max: 800 })).map((hundredths) => hundredths / 100);
const side = fc.constantFrom('front' as const, 'back' as const);

describe('names on the map', () => {
  it('lie on no other name, on no hole of the board and on no other sign, however crowded it is', () => {
    let shown = 0;
    fc.assert(
      fc.property(anyMap(), side, scale, (tray, from, near) => {
        const scene = traySceneOf(tray, board, from);
        const labels = trayLabels(scene, near, TYPE_PX);
        shown += labels.length;
        labels.forEach((label, at) => {
          for (const other of labels.slice(at + 1)) expect(overlap(label.box, other.box)).toBe(false);
          for (const { centre, radius } of scene.board?.holes ?? [])
            expect(overlap(label.box, rectAbout(centre, 2 * radius, 2 * radius))).toBe(false);
          for (const { id, at: middle } of [...scene.points, ...scene.standoffs])
            expect([id, contains(label.box, middle)]).toEqual([id, false]);
          for (const { id, box } of [...scene.openings, ...scene.fans])
            if (id !== label.of) expect([id, overlap(label.box, box)]).toEqual([id, false]);
        });
      }),
      { seed: 413, numRuns: 150 },
    );
    expect(shown).toBeGreaterThan(1_000);
  });

  it('stay where they are while one of the others is dragged, which keeps clear of them', () => {
    let kept = 0;
    fc.assert(
      fc.property(anyMap(), scale, fc.integer({ min: 1, max: 60 }), (tray, near, by) => {
        const [first, ...others] = tray.points;
        fc.pre(first !== undefined);
        const moved = { ...tray, points: [{ ...first, xMm: first.xMm + by }, ...others] };
        const resting = traySceneOf(tray, board, 'front');
        const going = labelsOnTheWay(resting, traySceneOf(moved, board, 'front'), near, TYPE_PX);
        const restOf = (labels: typeof going) => labels.filter(({ of }) => of !== first.id);
        expect(restOf(going)).toEqual(restOf(trayLabels(resting, near, TYPE_PX)));
        kept += restOf(going).length;
        const own = going.find(({ of }) => of === first.id);
        for (const { box } of own ? restOf(going) : []) expect(own && overlap(own.box, box)).toBe(false);
      }),
      { seed: 416, numRuns: 60 },
    );
    expect(kept).toBeGreaterThan(400);
  });

  it('are those of the shelf, and none is told twice', () => {
    fc.assert(
      fc.property(anyMap(), scale, (tray, near) => {
        const of = trayLabels(traySceneOf(tray, board, 'front'), near, TYPE_PX).map((label) => label.of);
        expect(new Set(of).size).toBe(of.length);
      }),
      { seed: 414, numRuns: 60 },
    );
  });
});

describe('from the back', () => {
  it('everything is where a mirror shows it, and what was near is far', () => {
    fc.assert(
      fc.property(anyMap(), (tray) => {
        const front = traySceneOf(tray, board, 'front');
        const back = traySceneOf(tray, board, 'back');
        const point = ({ x, y }: Point) => ({ x: near(tray.widthMm - x), y: near(y) });
        const rect = ({ x, y, width, height }: Rect) => ({
          x: near(tray.widthMm - x - width),
          y: near(y),
          width: near(width),
          height: near(height),
        });
        expect(back.sheet).toEqual(front.sheet);
        expect(back.points.map(({ at }) => at)).toEqual(front.points.map(({ at }) => point(at)));
        expect(back.standoffs.map(({ at }) => at)).toEqual(front.standoffs.map(({ at }) => point(at)));
        for (const kind of ['openings', 'bays', 'fans'] as const)
          expect(back[kind].map(({ box }) => box)).toEqual(front[kind].map(({ box }) => rect(box)));
        expect(back.fans.map(({ blows }) => blows)).toEqual(
          front.fans.map(({ blows }) => blows?.map(point) ?? null),
        );
        expect(back.paths.map(({ line }) => line)).toEqual(front.paths.map(({ line }) => line.map(point)));
        expect(back.paths.map((path) => path.near)).toEqual(front.paths.map((path) => !path.near));
        expect(back.board === null).toBe(front.board === null);
        if (back.board === null || front.board === null) return;
        expect(back.board.outline).toEqual(rect(front.board.outline));
        expect(back.board.holes.map(({ centre }) => centre)).toEqual(
          front.board.holes.map(({ centre }) => point(centre)),
        );
      }),
      { seed: 415, numRuns: 100 },
    );
  });
});

function near(mm: number) {
  return expect.closeTo(mm, 6);
}

describe('the board at its place', () => {
  // The microATX paper allows 244 mm by 244 mm (microATX Motherboard Interface Specification v1.2, Table 3).
  it('covers its published size from the corner that all boards share', () => {
    const tray = {
      widthMm: 400,
      heightMm: 400,
      points: [],
      openings: [],
      bays: [],
      board: { xMm: 10, yMm: 20, rear: 'left' as const },
      paths: [],
    };
    const { board: shown } = traySceneOf(tray, board, 'front');
    expect(shown?.outline).toEqual({ x: 10, y: 20, width: 244, height: 244 });
    expect(shown?.connectors.map(({ connector }) => connector)).toEqual(board.connectors.map(({ id }) => id));
  });
});
