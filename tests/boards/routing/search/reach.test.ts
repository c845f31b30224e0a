import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { passageProblem } from '../../../../boards/routing/fill/fill';
import type { Cable, Laying } from '../../../../boards/routing/fill/laying';
import { type Reach, type Route, reachOf } from '../../../../boards/routing/search/reach';
import { everyWay, type Way } from '../../../reference/every-route';
import { type Passable, type RouteOptimum, routeProgram } from '../../../reference/route-program';
import { anyTray } from '../any-tray';

let reference: (tray: Laying, passable: Passable) => RouteOptimum;
beforeAll(async () => {
  reference = await routeProgram();
});

function cableOf(tray: Laying): Cable {
  const [cable] = tray.cables;
  if (cable === undefined) throw new Error('A tray without a cable');
  return cable;
}

function kindOf(tray: Laying, cable: Cable) {
  const kind = tray.cableKinds.find(({ id }) => id === cable.kind);
  if (kind === undefined) throw new Error('A cable without a kind');
  return kind;
}

/** The best of some ways, by what is in sight and then by length. */
function bestOf(ways: readonly Way[]): Way | undefined {
  return [...ways].sort((a, b) => a.visibleMm - b.visibleMm || a.totalMm - b.totalMm)[0];
}

/** The route is one that lies in the tray, from end to end, and is as long as it says. */
function follow(tray: Laying, cable: Cable, route: Route): void {
  let place = cable.from;
  let side: string | undefined;
  const measured = { visibleMm: 0, totalMm: 0 };
  const passed: string[] = [];
  for (const id of route.paths) {
    const path = tray.paths.find((each) => each.id === id);
    if (path === undefined) throw new Error(`No path ${id}`);
    expect([path.from, path.to]).toContain(place);
    if (side !== undefined && side !== path.side) passed.push(place);
    place = path.from === place ? path.to : path.from;
    side = path.side;
    measured.totalMm += path.lengthMm;
    if (path.side === 'front') measured.visibleMm += path.lengthMm;
  }
  expect(place).toBe(cable.to);
  expect(passed).toEqual(route.openings);
  const { visibleMm, totalMm } = route;
  expect({ visibleMm, totalMm }).toEqual(measured);
  expect(route.spareMm).toBe(cable.lengthMm - 2 * kindOf(tray, cable).slackMm - totalMm);
}

describe('the route of a cable against brute force', () => {
  it('is the best of every way there is on 2,000 random trays, or says the same reason why not', () => {
    const seen: Record<Reach['kind'], number> = { reaches: 0, 'too-short': 0, 'no-way': 0 };
    const told = { neater: 0, ifOpen: 0 };
    fc.assert(
      fc.property(anyTray(1), (tray) => {
        const cable = cableOf(tray);
        const kind = kindOf(tray, cable);
        const budget = cable.lengthMm - 2 * kind.slackMm;
        const barred = tray.openings
          .filter((hole) => passageProblem(hole, kind, tray.behindMm))
          .map(({ id }) => id);
        const ways = everyWay(tray, cable, (opening) => !barred.includes(opening));
        const reaching = ways.filter(({ totalMm }) => totalMm <= budget);
        const anyhow = everyWay(tray, cable, () => true);
        const reach = reachOf(tray, cable);
        seen[reach.kind] += 1;
        if (reach.kind === 'reaches') {
          follow(tray, cable, reach.route);
          expect(reach.route).toMatchObject({ ...bestOf(reaching), openings: reach.route.openings });
          const neatest = bestOf(ways);
          expect(reach.neater?.visibleMm ?? reach.route.visibleMm).toBe(neatest?.visibleMm);
          if (reach.neater) {
            told.neater += 1;
            follow(tray, cable, reach.neater);
            expect(reach.neater.spareMm).toBeLessThan(0);
          }
          return;
        }
        expect(reaching).toEqual([]);
        expect(reach.barred.map(({ opening }) => opening)).toEqual(barred);
        if (reach.ifOpen) {
          told.ifOpen += 1;
          follow(tray, cable, reach.ifOpen);
          expect(reach.ifOpen.openings.some((opening) => barred.includes(opening))).toBe(true);
        }
        if (reach.kind === 'no-way') {
          expect(ways).toEqual([]);
          expect(reach.ifOpen === undefined).toBe(anyhow.length === 0);
          return;
        }
        follow(tray, cable, reach.shortest);
        follow(tray, cable, reach.neatest);
        expect(reach.shortest.totalMm).toBe(Math.min(...ways.map(({ totalMm }) => totalMm)));
        expect(reach.shortest.spareMm).toBeLessThan(0);
        expect(reach.neatest).toMatchObject({ ...bestOf(ways), openings: reach.neatest.openings });
        const reachingAnyhow = anyhow.filter(({ totalMm }) => totalMm <= budget);
        expect(reach.ifOpen?.visibleMm).toBe(bestOf(reachingAnyhow)?.visibleMm);
      }),
      { numRuns: 2_000, seed: 20_261_126 },
    );
    // Every kind of answer has to have been asked for.
    const counts = { ...seen, ...told };
    for (const [name, count] of Object.entries(counts)) expect(count, name).toBeGreaterThan(15);
  });
});

describe('the route of a cable against an integer program', () => {
  it('has the optimum of HiGHS on 500 random trays', () => {
    let reached = 0;
    fc.assert(
      fc.property(anyTray(1), (tray) => {
        const kind = kindOf(tray, cableOf(tray));
        const passable = [
          tray.openings.map((hole) => passageProblem(hole, kind, tray.behindMm) === undefined),
        ];
        const expected = reference(tray, passable);
        const reach = reachOf(tray, cableOf(tray));
        expect(expected.left).toBe(reach.kind === 'reaches' ? 0 : 1);
        if (reach.kind !== 'reaches') return;
        reached += 1;
        const { visibleMm, totalMm } = reach.route;
        expect({ left: 0, visibleMm, totalMm }).toEqual(expected);
      }),
      { numRuns: 500, seed: 7 },
    );
    expect(reached).toBeGreaterThan(100);
  });
});

/** A supply behind the tray, a header on its front, and two ways in: one round the bottom, one through the side. */
function twoWays(lengthMm: number, sideHeightMm = 20): Laying {
  const area = { xMm: 0, yMm: 0, widthMm: 50, heightMm: 20 };
  return {
    widthMm: 400,
    heightMm: 420,
    points: [{ id: 'header', kind: 'end', xMm: 300, yMm: 150 }],
    openings: [
      { ...area, id: 'bottom', edge: 'grommet' },
      { ...area, id: 'side', heightMm: sideHeightMm, edge: 'grommet' },
    ],
    bays: [],
    supply: { ...area, id: 'supply' },
    paths: [
      { id: 'to-bottom', from: 'supply', to: 'bottom', lengthMm: 100.1, side: 'back' },
      { id: 'across', from: 'bottom', to: 'header', lengthMm: 200.2, side: 'front' },
      { id: 'up', from: 'supply', to: 'side', lengthMm: 400.4, side: 'back' },
      { id: 'in', from: 'side', to: 'header', lengthMm: 50.5, side: 'front' },
    ],
    cableKinds: [{ id: 'main', diameterMm: 12, slackMm: 24.9 }],
    cables: [{ id: 'main', kind: 'main', from: 'supply', to: 'header', lengthMm }],
  };
}

describe('a main supply cable', () => {
  const reach = (tray: Laying) => reachOf(tray, cableOf(tray));

  it('goes behind the tray when it is long enough, to the micrometre', () => {
    // 400.4 + 50.5 and 24.9 at either end are 500.7.
    expect(reach(twoWays(500.7))).toEqual({
      kind: 'reaches',
      route: { paths: ['up', 'in'], openings: ['side'], visibleMm: 50.5, totalMm: 450.9, spareMm: 0 },
    });
  });

  it('goes across the front when it is not, and is told how much longer the neater way would have it', () => {
    expect(reach(twoWays(500.6))).toMatchObject({
      kind: 'reaches',
      route: { openings: ['bottom'], visibleMm: 200.2 },
      neater: { openings: ['side'], spareMm: -0.1 },
    });
  });

  it('is told by how much it is too short for either', () => {
    expect(reach(twoWays(300))).toMatchObject({
      kind: 'too-short',
      shortest: { openings: ['bottom'], spareMm: -50.1 },
      neatest: { openings: ['side'], spareMm: -200.7 },
      barred: [],
    });
  });

  it('is told which opening would help if it were larger', () => {
    const narrow = twoWays(600, 11);
    const paths = narrow.paths.filter(({ id }) => id !== 'across');
    expect(reach({ ...narrow, paths })).toMatchObject({
      kind: 'no-way',
      ifOpen: { openings: ['side'], spareMm: 99.3 },
      barred: [{ opening: 'side', problem: { code: 'too-narrow', diameterMm: 12, narrowMm: 11 } }],
    });
  });

  it('does not reach an island, and nothing would help', () => {
    expect(reach({ ...twoWays(600), paths: [] })).toEqual({ kind: 'no-way', barred: [] });
  });

  it('does not run on through a bay', () => {
    const tray = twoWays(600);
    const bays = [{ id: 'bay', xMm: 0, yMm: 0, widthMm: 100, heightMm: 100 }];
    const paths = [
      { id: 'one', from: 'supply', to: 'bay', lengthMm: 10, side: 'back' as const },
      { id: 'two', from: 'bay', to: 'header', lengthMm: 10, side: 'front' as const },
    ];
    expect(reach({ ...tray, bays, paths })).toEqual({ kind: 'no-way', barred: [] });
  });
});
