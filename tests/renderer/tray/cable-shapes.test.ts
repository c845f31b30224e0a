import { describe, expect, it } from 'vitest';
import type { Lead } from '../../../boards/document/lead';
import type { Tray } from '../../../boards/document/tray';
import { bundleDiameter } from '../../../boards/routing/fill/bundle';
import { asLaid } from '../../../boards/routing/laid/as-laid';
import { liesAlong, nextOfBundle } from '../../../renderer/canvas/tray/cable-shapes';
import { trayHits } from '../../../renderer/canvas/tray/tray-hits';
import { traySceneOf } from '../../../renderer/canvas/tray/tray-scene';
import { laidMachine, MACHINE_TRAY } from '../../boards/routing/laid/laid-machine';

const machine = laidMachine();
const laid = asLaid(machine);
if (laid === undefined) throw new Error('The machine has a tray');

const ref = (lead: string) => ({ lead, plug: 'plug' });

function drawn(
  side: 'front' | 'back',
  isShown: (lead: Lead) => boolean = () => true,
  tray: Tray = MACHINE_TRAY,
) {
  if (laid === undefined) throw new Error('The machine has a tray');
  return traySceneOf(tray, machine.board, side, { laid, isShown });
}

describe('cables on the map', () => {
  it('lie along every path of their way, and the last stretch to their connector', () => {
    const { cables } = drawn('back');
    for (const { lead, state } of laid.runs) {
      if (state.kind !== 'laid') throw new Error(`${lead.id} is ${state.kind}`);
      const along = cables.filter((each) => liesAlong(each, ref(lead.id))).map(({ path }) => path);
      expect(along.toSorted()).toEqual(state.route.paths.toSorted());
      expect(along.some((path) => path.includes('~'))).toBe(true);
    }
  });

  it('are one bundle where they share a path, as thick as such a bundle is', () => {
    const column = drawn('back').cables.find(({ path }) => path === 'panel-column');
    expect(column?.runs.map(({ lead }) => lead)).toEqual(['fan-top', 'fan-low', 'button']);
    expect(column?.widthMm).toBe(bundleDiameter([2.5, 2.5, 2]).usualMm);
    // Two of 2.5 mm side by side need 5 mm, more than 1.2 × √(sum of the squares) = 4.87 mm says.
    expect(column?.widthMm).toBe(5);
  });

  it('of kinds that are hidden are not drawn, and a bundle is as thick as what is left of it', () => {
    const { cables } = drawn('back', ({ id }) => id === 'button');
    expect(new Set(cables.flatMap(({ runs }) => runs.map(({ lead }) => lead)))).toEqual(new Set(['button']));
    expect(cables.find(({ path }) => path === 'panel-column')?.widthMm).toBe(2);
  });

  it('are near on the side that is looked at and far on the other', () => {
    for (const side of ['front', 'back'] as const)
      for (const { path, near } of drawn(side).cables)
        expect([path, near]).toEqual([path, path.includes('~') === (side === 'front')]);
  });

  it('go along with a place that is on its way', () => {
    const moved = {
      ...MACHINE_TRAY,
      points: MACHINE_TRAY.points.map((point) => (point.id === 'column' ? { ...point, xMm: 200 } : point)),
    };
    const line = drawn('front', undefined, moved).cables.find(({ path }) => path === 'panel-column')?.line;
    expect(line).toEqual([
      { x: 410, y: 30 },
      { x: 200, y: 150 },
    ]);
  });
});

describe('a press on a bundle', () => {
  it('chooses its cables one after another, then the path they lie along', () => {
    const runs = [ref('fan-top'), ref('fan-low')];
    expect(nextOfBundle(runs, undefined)).toEqual(ref('fan-top'));
    expect(nextOfBundle(runs, ref('button'))).toEqual(ref('fan-top'));
    expect(nextOfBundle(runs, ref('fan-top'))).toEqual(ref('fan-low'));
    expect(nextOfBundle(runs, ref('fan-low'))).toBeNull();
  });

  it('meets it over its whole width, and the place at its end before it', () => {
    const scene = drawn('back');
    const stretch = scene.cables.find(({ path }) => path === 'supply-column');
    if (stretch === undefined) throw new Error('Main and CPU cable lie from the supply to the column');
    const [from, to] = stretch.line;
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const aside = (by: number) => ({
      x: middle.x - ((to.y - from.y) / length) * by,
      y: middle.y + ((to.x - from.x) / length) * by,
    });
    const hit = trayHits(scene);
    const half = stretch.widthMm / 2;
    for (const by of [0, half - 0.1, 0.1 - half])
      expect(hit(aside(by), 0)).toMatchObject({ kind: 'plug', path: 'supply-column' });
    expect(hit(aside(half + 1), 0)).not.toMatchObject({ kind: 'plug' });
    expect(hit(scene.points[0]?.at ?? middle, 0)).toMatchObject({ part: { kind: 'point', id: 'column' } });
  });
});
