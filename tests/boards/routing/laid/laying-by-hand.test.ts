import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Build } from '../../../../boards/document/build';
import { applyCommand } from '../../../../boards/edit/apply';
import { asLaid } from '../../../../boards/routing/laid/as-laid';
import { bundlesOf } from '../../../../boards/routing/laid/bundles';
import { waysFor } from '../../../../boards/routing/laid/other-ways';
import {
  pinnedWays,
  routeDifferences,
  stillAnswers,
  takingRoutesOver,
} from '../../../../boards/routing/laid/route-differences';
import { pathOnTo, wayBegun } from '../../../../boards/routing/laid/way-choosing';
import { allRoutes } from '../../../../boards/routing/search/all-routes';
import { reachOf } from '../../../../boards/routing/search/reach';
import { everyWay } from '../../../reference/every-route';
import { anyTray } from '../any-tray';
import { laidMachine } from './laid-machine';

function laid(build = laidMachine()) {
  const found = asLaid(build);
  if (found === undefined) throw new Error('A case without a tray');
  return found;
}

describe('ways to choose from', () => {
  it('begin with the best one, are each another, and lie in the tray, on 500 random trays', () => {
    let several = 0;
    fc.assert(
      fc.property(anyTray(1), (tray) => {
        const [cable] = tray.cables;
        if (cable === undefined) throw new Error('A tray without a cable');
        const ways = waysFor(tray, cable);
        if (ways.length > 1) several += 1;
        const reach = reachOf(tray, cable);
        if (reach.kind === 'reaches') expect(ways[0]).toEqual(reach.route);
        if (reach.kind === 'no-way') expect(ways).toEqual([]);
        const all = everyWay(tray, cable, () => true).map(
          ({ visibleMm, totalMm }) => `${visibleMm} ${totalMm}`,
        );
        for (const { visibleMm, totalMm } of ways) expect(all).toContain(`${visibleMm} ${totalMm}`);
        expect(new Set(ways.map(({ paths }) => paths.join(' '))).size).toBe(ways.length);
      }),
      { numRuns: 500, seed: 3 },
    );
    expect(several).toBeGreaterThan(30);
  });
});

describe('a way chosen place by place', () => {
  it('can be followed along the best way, and is as long as that, on 500 random trays', () => {
    let followed = 0;
    fc.assert(
      fc.property(anyTray(1), (tray) => {
        const [cable] = tray.cables;
        if (cable === undefined) throw new Error('A tray without a cable');
        const reach = reachOf(tray, cable);
        if (reach.kind !== 'reaches') return;
        followed += 1;
        const { paths, totalMm, visibleMm } = reach.route;
        paths.forEach((path, at) => {
          const next = wayBegun(tray, cable, paths.slice(0, at))?.next ?? [];
          // A way that comes to one place on both sides passes its opening; the draft goes on from there.
          expect(next.map((each) => each.path)).toContain(path);
        });
        expect(wayBegun(tray, cable, paths)).toMatchObject({ done: true, totalMm, visibleMm, next: [] });
      }),
      { numRuns: 500, seed: 4 },
    );
    expect(followed).toBeGreaterThan(150);
  });

  it('goes on to a place by the shortest path there, and nowhere over what is an end', () => {
    const { laying, runs } = laid();
    const cable = runs.find(({ lead }) => lead.id === 'cpu')?.cable;
    if (cable === undefined) throw new Error('No cable');
    const begun = wayBegun(laying, cable, ['supply-column']);
    expect(begun?.at).toBe('column');
    expect(begun?.next.map(({ place, lengthMm }) => [place, lengthMm])).toEqual([
      ['beside', 60],
      ['below', 150],
      ['front-panel', 200],
      ['above', 200],
    ]);
    expect(begun?.next.some(({ place }) => place === 'bay')).toBe(false);
    expect(begun && pathOnTo(begun, 'above')).toBe('column-above');
    expect(begun && pathOnTo(begun, 'supply')).toBeUndefined();
    expect(wayBegun(laying, cable, ['column-above'])).toBeUndefined();
  });
});

describe('all cables laid together', () => {
  it('differ from what was chosen run by run, and applied there is no difference left', () => {
    const machine = laidMachine({
      routes: [{ lead: 'main', plug: 'plug', paths: ['supply-column', 'column-above'] }],
    });
    const before = laid(machine);
    const found = allRoutes(before.laying);
    const differences = routeDifferences(machine, found);
    expect(differences.map(({ run }) => run.lead.id)).toContain('main');
    const applied = applyCommand(machine, { name: 'lay-runs', args: takingRoutesOver(differences) });
    if (!applied.ok) throw new Error('Not carried out');
    expect(routeDifferences(applied.value, found)).toEqual([]);
    expect(laid(applied.value).openings.filter(({ over }) => over)).toEqual([]);
  });

  it('leave pinned ways as they are', () => {
    const pinned = {
      lead: 'main',
      plug: 'plug',
      paths: ['supply-column', 'column-above'],
      pinned: true as const,
    };
    const machine = laidMachine({ routes: [pinned] });
    const before = laid(machine);
    const found = allRoutes(before.laying, { pinned: pinnedWays(before) });
    expect(routeDifferences(machine, found).map(({ run }) => run.lead.id)).not.toContain('main');
  });

  it('stand for what was asked: not past a way that is pinned otherwise since, nor past one that is let go', () => {
    const main = { lead: 'main', plug: 'plug' };
    const machine = laidMachine();
    const by = (...paths: string[]): Build => ({ ...machine, routes: [{ ...main, paths }] });
    const pinning = (build: Build, pinned: boolean) => {
      const done = applyCommand(build, { name: 'pin-run', args: { ...main, pinned } });
      if (!done.ok) throw new Error('Not carried out');
      return done.value;
    };
    const found = (build: Build) => {
      const { laying } = laid(build);
      const pinned = pinnedWays(laid(build));
      return { laying, pinned, routes: allRoutes(laying, { pinned }) };
    };
    const round = by('supply-column', 'column-above');
    const free = found(round);
    // The way of the main cable goes round by the opening above; laid together it takes the one beside the board.
    expect(routeDifferences(round, free.routes).map(({ run }) => run.id)).toContain('main/plug');
    expect(stillAnswers(laid(round), free)).toBe(true);
    expect(stillAnswers(laid(pinning(round, true)), free)).toBe(false);

    const taken = by('supply-column', 'column-beside');
    expect(laid(taken).laying).toBe(free.laying);
    expect(stillAnswers(laid(taken), free)).toBe(true);
    expect(stillAnswers(laid(pinning(taken, true)), free)).toBe(true);

    const held = found(pinning(round, true));
    expect(stillAnswers(laid(pinning(round, true)), held)).toBe(true);
    expect(stillAnswers(laid(round), held)).toBe(false);
  });

  it('stand for the cables and the tray that they were asked for', () => {
    const machine = laidMachine();
    const { laying } = laid(machine);
    const found = { laying, pinned: new Map(), routes: allRoutes(laying) };
    expect(stillAnswers(laid(machine), found)).toBe(true);
    expect(stillAnswers(laid({ ...machine, seats: machine.seats.slice(1) }), found)).toBe(false);
  });
});

describe('bundles', () => {
  it('are what shares a path, from the thickest, between the least and the usual thickness', () => {
    const [first, ...more] = bundlesOf(laid());
    expect(more.length).toBeGreaterThan(0);
    expect(first?.runs.map(({ lead }) => lead.id)).toEqual(['main', 'cpu']);
    expect(first?.path).toBe('supply-column');
    // Two round cables side by side are as thick as both; 1.2 × √(12² + 8²) is less (rule of the trade, from memory).
    expect(first?.leastMm).toBe(20);
    expect(first?.usualMm).toBe(20);
  });
});
