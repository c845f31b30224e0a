import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contains, type Line, type Point } from '../../../boards/drawing/geometry';
import { type TrayTarget, trayHits } from '../../../renderer/canvas/tray/tray-hits';
import {
  POINT_RADIUS,
  STANDOFF_RADIUS,
  type TrayScene,
  traySceneOf,
} from '../../../renderer/canvas/tray/tray-scene';
import { board } from '../../boards/library/demo-files';
import { anyMap } from './any-map';

const share = fc.noBias(fc.integer({ min: 0, max: 10_000 })).map((whole) => whole / 10_000);

/** The slow, obvious way: everything, from the top down. */
function bruteForce(scene: TrayScene, point: Point, reach: number): TrayTarget | null {
  const { points, standoffs, openings, bays, supply, fans, paths, board: laid } = scene;
  const on =
    (kind: 'point' | 'standoff' | 'opening' | 'bay' | 'supply' | 'fan' | 'path') =>
    ({ id }: { id: string }): TrayTarget => ({ kind: 'on-tray', part: { kind, id } });
  const away = (at: Point) => Math.hypot(at.x - point.x, at.y - point.y);
  const round = [
    ...standoffs.map((each) => ({ target: on('standoff')(each), away: away(each.at) - STANDOFF_RADIUS })),
    ...points.map((each) => ({ target: on('point')(each), away: away(each.at) - POINT_RADIUS })),
  ];
  const areas: readonly { readonly target: TrayTarget; readonly box: Parameters<typeof contains>[0] }[] = [
    ...fans.map((each) => ({ target: on('fan')(each), box: each.box })),
    ...(laid?.near ? laid.connectors : []).map(({ connector, box }) => ({
      target: { kind: 'connector' as const, connector },
      box,
    })),
    ...openings.map((each) => ({ target: on('opening')(each), box: each.box })),
  ];
  const under = [
    ...(laid === null
      ? []
      : [
          {
            target: { kind: 'on-tray' as const, part: { kind: 'board' as const, id: 'board' } },
            box: laid.outline,
          },
        ]),
    ...bays.map((each) => ({ target: on('bay')(each), box: each.box })),
    ...(supply === null ? [] : [{ target: on('supply')(supply), box: supply.box }]),
  ];
  const nearest = (all: readonly { target: TrayTarget; away: number }[]) =>
    all
      .filter((each) => each.away <= reach)
      .toSorted((a, b) => a.away - b.away || all.indexOf(b) - all.indexOf(a))[0]?.target;
  return (
    nearest(round) ??
    areas.filter(({ box }) => contains(box, point)).at(-1)?.target ??
    nearest(paths.map((each) => ({ target: on('path')(each), away: fromLine(each.line, point) }))) ??
    under.filter(({ box }) => contains(box, point)).at(-1)?.target ??
    null
  );
}

/** By trying a thousand points of the line. */
function fromLine([from, to]: Line, point: Point): number {
  let least = Number.POSITIVE_INFINITY;
  for (let step = 0; step <= 1_000; step++) {
    const [x, y] = [from.x + ((to.x - from.x) * step) / 1_000, from.y + ((to.y - from.y) * step) / 1_000];
    least = Math.min(least, Math.hypot(x - point.x, y - point.y));
  }
  return least;
}

describe('what lies under the pointer on the map', () => {
  it('is what looking through everything finds', () => {
    let met = 0;
    fc.assert(
      fc.property(
        anyMap(),
        share,
        share,
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        (tray, x, y, reach) => {
          const scene = traySceneOf(tray, board, 'front');
          const { bounds } = scene;
          const point = { x: bounds.x + x * bounds.width, y: bounds.y + y * bounds.height };
          const found = trayHits(scene)(point, reach);
          if (found !== null) met += 1;
          const expected = bruteForce(scene, point, reach);
          // A path whose distance is the reach to a hundredth is told either way by the thousand points.
          if (found?.kind === 'on-tray' && found.part.kind === 'path' && expected !== found) {
            const away = (target: TrayTarget | null) => {
              const id = target?.kind === 'on-tray' ? target.part.id : '';
              const line = scene.paths.find((path) => path.id === id)?.line;
              return line ? fromLine(line, point) : reach;
            };
            expect(away(expected)).toBeCloseTo(away(found), 0);
            return;
          }
          expect(found).toEqual(expected);
        },
      ),
      { seed: 416, numRuns: 400 },
    );
    expect(met).toBeGreaterThan(100);
  });

  it('is every point at its middle, and nothing far outside', () => {
    fc.assert(
      fc.property(anyMap(), (tray) => {
        const scene = traySceneOf(tray, board, 'back');
        const hit = trayHits(scene);
        for (const { at } of scene.points) {
          const target = hit(at, 0);
          expect(target?.kind === 'on-tray' && ['point', 'standoff'].includes(target.part.kind)).toBe(true);
        }
        expect(hit({ x: scene.bounds.x - 50, y: scene.bounds.y - 50 }, 5)).toBeNull();
      }),
      { seed: 417, numRuns: 60 },
    );
  });
});
