import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { passageProblem, roomFor } from '../../../../boards/routing/fill/fill';
import type { Laying } from '../../../../boards/routing/fill/laying';
import { type AllRoutes, allRoutes, ROUTING_LIMITS } from '../../../../boards/routing/search/all-routes';
import { type Route, reachOf } from '../../../../boards/routing/search/reach';
import { compareRouteCosts } from '../../../../boards/routing/search/route-cost';
import { type Passable, type RouteOptimum, routeProgram } from '../../../reference/route-program';
import { anyTray } from '../any-tray';

let reference: (tray: Laying, passable: Passable) => RouteOptimum;
beforeAll(async () => {
  reference = await routeProgram();
});

function passableOf(tray: Laying): Passable {
  return tray.cables.map((cable) => {
    const kind = tray.cableKinds.find(({ id }) => id === cable.kind);
    if (kind === undefined) throw new Error(`No kind ${cable.kind}`);
    return tray.openings.map((hole) => passageProblem(hole, kind, tray.behindMm) === undefined);
  });
}

function optimum({ cost }: AllRoutes): RouteOptimum {
  return { left: cost.left, visibleMm: cost.visibleUm / 1000, totalMm: cost.totalUm / 1000 };
}

/** The openings that hold more than they may, and the sums of what is laid beside what the answer says of them. */
function faultsOf(tray: Laying, { cables, cost }: AllRoutes): readonly string[] {
  const laid = cables.flatMap((each) => (each.kind === 'laid' ? [each] : []));
  const thickness = (id: string) => {
    const kind = tray.cables.find((cable) => cable.id === id)?.kind;
    return tray.cableKinds.find((each) => each.id === kind)?.diameterMm ?? 0;
  };
  const over = tray.openings.filter(
    (opening) =>
      !roomFor(
        opening,
        laid.filter(({ route }) => route.openings.includes(opening.id)).map(({ cable }) => thickness(cable)),
      ),
  );
  const sum = (of: (each: (typeof laid)[number]) => number) =>
    laid.reduce((total, each) => total + of(each), 0);
  return [
    ...over.map(({ id }) => `${id} is overfilled`),
    ...laid.filter(({ route }) => route.spareMm < 0).map(({ cable }) => `${cable} is too short`),
    ...(cables.length - laid.length === cost.left ? [] : ['another number is left']),
    ...(Math.abs(sum(({ route }) => route.visibleMm) - cost.visibleUm / 1000) < 1e-6
      ? []
      : ['more is in sight']),
    ...(Math.abs(sum(({ route }) => route.totalMm) - cost.totalUm / 1000) < 1e-6 ? [] : ['it is longer']),
  ];
}

/** True for a route that the cable would not have if it were alone. */
function makesWay(route: Route, tray: Laying, at: number): boolean {
  const cable = tray.cables[at];
  const alone = cable && reachOf(tray, cable);
  return alone?.kind === 'reaches' && alone.route.openings.join() !== route.openings.join();
}

describe('the routes of all cables against an integer program', () => {
  it('have the optimum of HiGHS on 300 random trays of eight cables', () => {
    const seen = { laid: 0, 'crowded-out': 0, unreached: 0, rerouted: 0 };
    fc.assert(
      fc.property(anyTray(8), (tray) => {
        const found = allRoutes(tray);
        expect(found.proved).toBe(true);
        expect(optimum(found)).toEqual(reference(tray, passableOf(tray)));
        expect(faultsOf(tray, found)).toEqual([]);
        for (const { kind } of found.cables) seen[kind] += 1;
        seen.rerouted += found.cables.filter(
          (each, at) => each.kind === 'laid' && makesWay(each.route, tray, at),
        ).length;
      }),
      { numRuns: 300, seed: 20_261_126 },
    );
    // Every kind of answer has to have been asked for, and cables that make way without being left.
    for (const [name, count] of Object.entries(seen)) expect(count, name).toBeGreaterThan(5);
  });
});

describe('the routes of all cables by themselves', () => {
  it('are the same for the same tray', () => {
    fc.assert(
      fc.property(anyTray(8), (tray) => {
        expect(allRoutes(structuredClone(tray))).toEqual(allRoutes(tray));
      }),
    );
  });

  it('are sound and no worse than their bound promises when the steps run out', () => {
    let unproved = 0;
    fc.assert(
      fc.property(anyTray(10), (tray) => {
        const whole = allRoutes(tray);
        const hasty = allRoutes(tray, { limits: { ...ROUTING_LIMITS, steps: 1 } });
        expect(faultsOf(tray, hasty)).toEqual([]);
        expect(compareRouteCosts(hasty.bound, whole.cost)).toBeLessThanOrEqual(0);
        expect(compareRouteCosts(whole.cost, hasty.cost)).toBeLessThanOrEqual(0);
        if (hasty.proved) expect(hasty.cost).toEqual(whole.cost);
        else unproved += 1;
      }),
      { numRuns: 500, seed: 3 },
    );
    expect(unproved).toBeGreaterThan(5);
  });

  it('are sound when the labels run out, and are not called proved', () => {
    let unproved = 0;
    fc.assert(
      fc.property(anyTray(10), (tray) => {
        const whole = allRoutes(tray);
        const hasty = allRoutes(tray, { limits: { ...ROUTING_LIMITS, labels: 5 } });
        expect(faultsOf(tray, hasty)).toEqual([]);
        expect(compareRouteCosts(hasty.bound, whole.cost)).toBeLessThanOrEqual(0);
        if (!hasty.proved) unproved += 1;
        else expect(hasty.cost).toEqual(whole.cost);
      }),
      { numRuns: 300, seed: 4 },
    );
    expect(unproved).toBeGreaterThan(5);
  });

  it('keep pinned ways, lay the rest round them, and are no better for it', () => {
    let crowded = 0;
    fc.assert(
      fc.property(anyTray(8), fc.nat(), (tray, pick) => {
        const whole = allRoutes(tray);
        const able = tray.cables.flatMap((cable) => {
          const reach = reachOf(tray, cable);
          return reach.kind === 'reaches' ? [{ cable, route: reach.route }] : [];
        });
        const one = able[pick % Math.max(1, able.length)];
        if (one === undefined) return;
        const found = allRoutes(tray, { pinned: new Map([[one.cable.id, one.route]]) });
        expect(found.cables.find(({ cable }) => cable === one.cable.id)).toEqual({
          kind: 'laid',
          cable: one.cable.id,
          route: one.route,
        });
        expect(faultsOf(tray, found)).toEqual([]);
        expect(compareRouteCosts(whole.cost, found.cost)).toBeLessThanOrEqual(0);
        const others = tray.cables.filter(({ id }) => id !== one.cable.id);
        // Without the room that it takes the others are laid no worse.
        const free = allRoutes({ ...tray, cables: others });
        if (free.cost.left < found.cost.left) crowded += 1;
        expect(free.cost.left).toBeLessThanOrEqual(found.cost.left);
      }),
      { numRuns: 300, seed: 6 },
    );
    expect(crowded).toBeGreaterThan(5);
  });

  it('tell how far they have come', () => {
    const [tray] = fc.sample(anyTray(40), { numRuns: 1, seed: 1 });
    if (tray === undefined) throw new Error('No tray');
    const told: unknown[] = [];
    allRoutes(tray, { tell: (progress) => told.push(progress) });
    expect(told.slice(0, 3)).toEqual([0, 16, 32].map((done) => ({ stage: 'ways', done, of: 40 })));
  });
});

/** Drives behind the tray and their ports on its front, with one near opening and one far one. */
function drives(count: number): Laying {
  const area = { xMm: 0, yMm: 0, widthMm: 40, heightMm: 20 };
  return {
    widthMm: 400,
    heightMm: 420,
    points: [{ id: 'ports', kind: 'end', xMm: 300, yMm: 150 }],
    openings: [
      // 12 mm across: two data cables of 4.6 mm fill 29 %, and a third makes 44 %.
      { ...area, id: 'near', widthMm: 12, heightMm: 12, round: true, edge: 'grommet' },
      { ...area, id: 'far', edge: 'rolled' },
    ],
    bays: [{ ...area, id: 'bay' }],
    paths: [
      { id: 'near-back', from: 'bay', to: 'near', lengthMm: 150, side: 'back' },
      { id: 'near-front', from: 'near', to: 'ports', lengthMm: 60, side: 'front' },
      { id: 'far-back', from: 'bay', to: 'far', lengthMm: 250, side: 'back' },
      { id: 'far-front', from: 'far', to: 'ports', lengthMm: 140, side: 'front' },
    ],
    cableKinds: [{ id: 'data', diameterMm: 4.6, slackMm: 20 }],
    cables: Array.from({ length: count }, (_, at) => ({
      id: `data-${at}`,
      kind: 'data',
      from: 'bay',
      to: 'ports',
      // Only the first is too short for the far way.
      lengthMm: at === 0 ? 300 : 500,
    })),
  };
}

describe('data cables that want the same opening', () => {
  it('take it as long as the fill table lets them', () => {
    const { cables, proved } = allRoutes(drives(2));
    expect(proved).toBe(true);
    expect(cables).toMatchObject([{ route: { openings: ['near'] } }, { route: { openings: ['near'] } }]);
  });

  it('leave it to the one that has no other way', () => {
    const found = allRoutes(drives(4));
    const through = found.cables.map((each) =>
      each.kind === 'laid' ? each.route.openings.join() : each.kind,
    );
    expect(through[0]).toBe('near');
    expect(through.toSorted()).toEqual(['far', 'far', 'near', 'near']);
    expect(found).toMatchObject({ proved: true, cost: { left: 0, visibleUm: 400_000 } });
  });

  it('say which was crowded out, and the way it would have alone', () => {
    const tray = drives(3);
    const short = tray.cables.map((cable) => ({ ...cable, lengthMm: 300 }));
    const { cables, cost } = allRoutes({ ...tray, cables: short });
    expect(cost.left).toBe(1);
    expect(cables.filter(({ kind }) => kind === 'crowded-out')).toEqual([
      {
        kind: 'crowded-out',
        cable: 'data-2',
        alone: {
          paths: ['near-back', 'near-front'],
          openings: ['near'],
          visibleMm: 60,
          totalMm: 210,
          spareMm: 50,
        },
      },
    ]);
  });
});
