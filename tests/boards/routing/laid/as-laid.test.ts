import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Build } from '../../../../boards/document/build';
import type { Lead } from '../../../../boards/document/lead';
import type { Tray } from '../../../../boards/document/tray';
import { type AsLaid, asLaid, chosenPaths, routeAlong } from '../../../../boards/routing/laid/as-laid';
import { layingOf } from '../../../../boards/routing/laid/laying-of';
import { reachOf } from '../../../../boards/routing/search/reach';
import { bench, grid, lead, posts, seat } from '../../fixtures/bench';
import { anyTray } from '../any-tray';

/**
 * Supply low at the left; behind the tray up to an opening 20 mm right of the board's only header; or along the front.
 * The board lies with its rear to the left, its corner at 20, 20: 100 mm high, 200 mm from left to right.
 */
const TRAY: Tray = {
  widthMm: 400,
  heightMm: 420,
  points: [{ id: 'low', kind: 'tie', xMm: 40, yMm: 380 }],
  openings: [{ id: 'right', xMm: 230, yMm: 60, widthMm: 20, heightMm: 40, edge: 'grommet' }],
  bays: [{ id: 'bay', xMm: 320, yMm: 20, widthMm: 60, heightMm: 100 }],
  supply: { id: 'supply', xMm: 10, yMm: 340, widthMm: 150, heightMm: 70 },
  board: { xMm: 20, yMm: 20, rear: 'left' },
  paths: [
    { id: 'behind', from: 'supply', to: 'right', lengthMm: 300, side: 'back' },
    { id: 'along', from: 'supply', to: 'low', lengthMm: 50, side: 'front' },
    { id: 'up', from: 'low', to: 'bay', lengthMm: 420, side: 'front' },
  ],
};

function cableLead(over: Partial<NonNullable<Lead['cable']>> = {}): Lead {
  const plain = lead('power', grid(1, 2));
  return {
    ...plain,
    cable: { diameterMm: 6, slackMm: 20, start: 'supply', runs: [{ to: 'plug', lengthMm: 500 }], ...over },
  };
}

function buildWith(cable: Lead, over: Partial<Build> = {}): Build {
  const plain = bench([posts('socket', grid(1, 2), { place: { xMm: 190, yMm: 60, turn: 0 } })], [cable]);
  return {
    ...plain,
    board: { ...plain.board, outline: { widthMm: 200, depthMm: 100, rear: 'left' } },
    case: { ...plain.case, tray: TRAY },
    seats: [seat('power', 'socket', [0, 0])],
    ...over,
  };
}

function laid(build: Build): AsLaid {
  const found = asLaid(build);
  if (found === undefined) throw new Error('A case without a tray');
  return found;
}

function stateOf(build: Build) {
  const [run] = laid(build).runs;
  return run?.state;
}

describe('cables of a build on the tray of its case', () => {
  it('end at the connector where it lies on the tray, and come to it across and down the board', () => {
    const found = layingOf(buildWith(cableLead()));
    const socket = found?.laying.bays.find(({ id }) => id === 'board/socket');
    // Pins at 190 and 192.54 on the board, whose corner is at 20, 20: the middle of the block by hand.
    expect(socket?.xMm).toBeCloseTo(211.27, 9);
    expect(socket?.yMm).toBe(80);
    const stretch = found?.laying.paths.find(({ id }) => id === 'board/socket~right');
    expect(stretch).toMatchObject({ side: 'front' });
    expect(stretch?.lengthMm).toBeCloseTo(240 - 211.27, 6);
  });

  it('have no way until one is chosen, and then one with what is left of the cable', () => {
    expect(stateOf(buildWith(cableLead()))).toEqual({ kind: 'open', broken: false });
    const routes = [{ lead: 'power', plug: 'plug', paths: ['behind'] }];
    const state = stateOf(buildWith(cableLead(), { routes }));
    if (state?.kind !== 'laid') throw new Error(`It is ${state?.kind}`);
    expect(state.route.openings).toEqual(['right']);
    expect(state.route.totalMm).toBeCloseTo(300 + 28.73, 6);
    expect(state.route.visibleMm).toBeCloseTo(28.73, 6);
    expect(state.route.spareMm).toBeCloseTo(500 - 2 * 20 - 328.73, 6);
  });

  it('say by how much they are too short, and which openings they do not go through', () => {
    const thick = cableLead({ diameterMm: 22, runs: [{ to: 'plug', lengthMm: 340 }] });
    const state = stateOf(buildWith(thick, { routes: [{ lead: 'power', plug: 'plug', paths: ['behind'] }] }));
    if (state?.kind !== 'laid') throw new Error(`It is ${state?.kind}`);
    expect(state.route.spareMm).toBeCloseTo(340 - 40 - 328.73, 6);
    expect(state.barred).toEqual([
      { opening: 'right', problem: { code: 'too-narrow', diameterMm: 22, narrowMm: 20 } },
    ]);
  });

  it('fill the openings that they pass', () => {
    const routes = [{ lead: 'power', plug: 'plug', paths: ['behind'] }];
    const [use] = laid(buildWith(cableLead(), { routes })).openings;
    expect(use).toMatchObject({ runs: ['power/plug'] });
    expect(use?.over).toBeUndefined();
    expect(use?.fill).toBeCloseTo((Math.PI * 9) / 800, 9);
  });

  it('have no way where paths are gone or lead elsewhere, and lose nothing else', () => {
    for (const paths of [['gone'], ['up'], ['along', 'behind'], ['behind', 'behind']])
      expect(stateOf(buildWith(cableLead(), { routes: [{ lead: 'power', plug: 'plug', paths }] }))).toEqual({
        kind: 'open',
        broken: true,
      });
  });

  it('are not laid until both ends are known', () => {
    const problem = (build: Build) => {
      const state = stateOf(build);
      return state?.kind === 'not-laid' ? state.problem : state;
    };
    const sound = buildWith(cableLead());
    expect(problem({ ...sound, seats: [] })).toEqual({ code: 'not-plugged', plug: 'plug' });
    const { start, ...unbegun } = cableLead().cable ?? {};
    expect(start).toBe('supply');
    const begun = (cable: object) => buildWith(Object.assign(cableLead(), { cable }));
    expect(problem(begun(unbegun))).toEqual({ code: 'no-start' });
    expect(problem(begun({ ...unbegun, start: 'attic' }))).toEqual({ code: 'start-unknown', place: 'attic' });
    const { board, ...boardless } = TRAY;
    expect(board).toBeDefined();
    expect(problem({ ...sound, case: { ...sound.case, tray: boardless } })).toEqual({
      code: 'no-board-place',
    });
  });

  it('run from a unit at its place to the next, and on from plug to plug', () => {
    const drive = (id: string, at?: string) => ({
      id,
      name: id,
      kind: 'drive' as const,
      ...(at !== undefined && { at }),
      connectors: [posts(`${id}-power`, grid(1, 2))],
    });
    const plain = lead('power', grid(1, 2));
    const [first] = plain.plugs;
    if (first === undefined) throw new Error('A lead without a plug');
    const chain: Lead = {
      ...plain,
      plugs: [first, { ...first, id: 'second' }],
      wires: [],
      cable: {
        diameterMm: 6,
        slackMm: 20,
        start: 'supply',
        runs: [
          { to: 'plug', lengthMm: 600 },
          { from: 'plug', to: 'second', lengthMm: 150 },
        ],
      },
    };
    const seats = [seat('power', 'upper-power'), { ...seat('power', 'lower-power'), plug: 'second' }];
    const states = (units: Build['units']) =>
      laid(buildWith(chain, { seats, units })).runs.map(({ state }) => state);
    expect(states([drive('upper', 'bay'), drive('lower')])).toEqual([
      { kind: 'open', broken: false },
      { kind: 'not-laid', problem: { code: 'no-unit-place', unit: 'lower' } },
    ]);
    expect(states([drive('upper', 'bay'), drive('lower', 'bay')])[1]).toEqual({
      kind: 'not-laid',
      problem: { code: 'same-place' },
    });
    expect(states([drive('upper', 'bay'), drive('lower', 'low')])).toEqual([
      { kind: 'open', broken: false },
      { kind: 'open', broken: false },
    ]);
  });
});

describe('a chosen way', () => {
  const tie = (at: number) => ({ id: `tie-${at}`, kind: 'tie' as const, xMm: 221 + at, yMm: 80 });
  /** The tray of the one connector with so many ties right beside it, which a path may join or not. */
  const crowded = (build: Build, joined: boolean): Build => {
    const ties = Array.from({ length: 9 }, (_, at) => tie(at));
    const paths = ties.slice(1).map(({ id }, at) => ({
      id: `join-${id}`,
      from: `tie-${at}`,
      to: id,
      lengthMm: 5,
      side: 'front' as const,
    }));
    const { tray = TRAY } = build.case;
    const points = [...tray.points, ...ties];
    return {
      ...build,
      case: { ...build.case, tray: { ...tray, points, paths: [...tray.paths, ...(joined ? paths : [])] } },
    };
  };

  it('through an opening is kept, however many ties are drawn nearer to the connector', () => {
    const build = buildWith(cableLead(), { routes: [{ lead: 'power', plug: 'plug', paths: ['behind'] }] });
    for (const joined of [false, true]) {
      const ties = layingOf(crowded(build, joined))?.laying.paths.filter(({ to }) => to.startsWith('tie'));
      expect(ties?.filter(({ from }) => from === 'board/socket')).toHaveLength(joined ? 8 : 0);
      expect(stateOf(crowded(build, joined))).toEqual(stateOf(build));
    }
  });

  it('along the front is kept as well, from where the cable begins and past ties that lead nowhere', () => {
    const here = cableLead({ start: 'low' });
    const routes = [{ lead: 'power', plug: 'plug', paths: [] }];
    const build = buildWith(here, { routes });
    const state = stateOf(build);
    // From 40, 380 to the middle of the connector at 211.27, 80: straight over the front.
    expect(state).toMatchObject({
      kind: 'laid',
      route: { openings: [], totalMm: 471.27, visibleMm: 471.27 },
    });
    for (const joined of [false, true]) expect(stateOf(crowded(build, joined))).toEqual(state);
    const along = buildWith(cableLead({ runs: [{ to: 'plug', lengthMm: 700 }] }), {
      routes: [{ lead: 'power', plug: 'plug', paths: ['along'] }],
    });
    expect(stateOf(along)).toMatchObject({ kind: 'laid', route: { totalMm: 50 + 471.27 } });
    expect(stateOf(crowded(along, false))).toEqual(stateOf(along));
  });

  it('is measured as the search measures it, on 500 random trays', () => {
    let reached = 0;
    fc.assert(
      fc.property(anyTray(3), (laying) => {
        for (const cable of laying.cables) {
          const reach = reachOf(laying, cable);
          if (reach.kind !== 'reaches') continue;
          reached += 1;
          expect(chosenPaths(reach.route)).toEqual(reach.route.paths);
          expect(routeAlong(laying, cable, reach.route.paths)).toEqual(reach.route);
        }
      }),
      { numRuns: 500 },
    );
    expect(reached).toBeGreaterThan(200);
  });
});
