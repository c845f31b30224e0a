import { beforeAll, describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { samePlug } from '../../../boards/document/lookup';
import { placesOf } from '../../../boards/fit/places';
import { CONNECTOR_TYPES } from '../../../boards/library/connectors/index';
import { LEAD_TYPES } from '../../../boards/library/leads/index';
import { makeConnector } from '../../../boards/library/make-connector';
import { conflictAbout, goTogether } from '../../../boards/planner/conflict';
import type { Cost } from '../../../boards/planner/cost';
import type { Instance } from '../../../boards/planner/instance';
import { arrangementsOf, planOf, solve } from '../../../boards/planner/plan';
import { instanceOf, problemOf } from '../../../boards/planner/problem';
import { SEARCH_LIMITS, search } from '../../../boards/planner/search';
import { integerProgram } from '../../reference/integer-program';
import { demo } from '../findings/demo';
import { bench, grid, lead, partLead, posts, seat } from '../fixtures/bench';

let reference: (instance: Instance) => Cost | 'impossible';
beforeAll(async () => {
  reference = await integerProgram();
});

const WIRED = demo('wired');
const BARE: Build = { ...WIRED, seats: [] };
const PAIR = { a: '1', b: '2' };
const LED = { anode: '1', cathode: '2' };

describe('the plan of the demo', () => {
  it('serves every function without a danger or a fault, and is proved', () => {
    const plan = planOf(BARE);
    expect(plan).toMatchObject({ off: [], proved: true });
    expect(plan.cost).toMatchObject({
      danger: 0,
      essentialUnserved: 0,
      unserved: 0,
      polarity: 0,
      overhang: 0,
    });
    expect(plan.findings.filter(({ severity }) => severity === 'danger' || severity === 'fault')).toEqual([]);
  });

  it('rules out every other arrangement: counted by every place of every plug, and left off', () => {
    const power = partLead('power', 'power-switch', grid(1, 2), PAIR);
    // Along both pins, along one with a hole past either end, across one from either side: seven, each two ways round.
    const pair = bench([posts('p', grid(1, 2), { pins: ['power-switch-input', 'ground'] })], [power]);
    expect(placesOf(pair, { lead: 'power', plug: 'plug' })).toHaveLength(14);
    expect(arrangementsOf(problemOf(pair, []))).toBe(15n);
    expect(arrangementsOf(problemOf(pair, [{ lead: 'power', plug: 'plug' }]))).toBe(15n);
    expect(arrangementsOf(problemOf(BARE, []))).toBeGreaterThan(10n ** 30n);
  });

  it('mends a wiring with eight slips in it', () => {
    const plan = planOf(demo('eight-slips'));
    expect(plan.findings.filter(({ severity }) => severity === 'danger' || severity === 'fault')).toEqual([]);
  });

  it('is the same for the same build', () => {
    expect(planOf(structuredClone(BARE))).toEqual(planOf(BARE));
  });

  it('takes the cap off the two pins that clear the settings, and leaves it off where there are no others', () => {
    // Clear-settings jumper, cap on 1-2 to keep and on 2-3 to clear: common practice, no source.
    const cap = partLead('cap', 'jumper-cap', grid(1, 2), PAIR);
    const place = { xMm: 0, yMm: 0, turn: 0 } as const;
    const three = makeConnector('clear-settings-1x3', { id: 'clear', print: 'CLEAR', place });
    const clearing = seat('cap', 'clear', [0, 1]);
    expect(planOf(bench([three], [cap], [clearing])).seats).toEqual([seat('cap', 'clear', [0, 0])]);
    const two = posts('clear', grid(1, 2), { pins: ['clear-settings', 'ground'] });
    expect(planOf(bench([two], [cap])).seats).toEqual([]);
  });

  it('keeps a pinned plug where it is, even where that serves nothing', () => {
    const pinned = { lead: 'power-switch', plug: 'plug' };
    const astray: Build = { ...BARE, seats: [seat('power-switch', 'speaker', [0, 0])] };
    const plan = planOf(astray, { pinned: [pinned] });
    expect(plan.seats.find((each) => samePlug(each, pinned))).toEqual(astray.seats[0]);
    expect(plan.off).toContainEqual({ lead: 'speaker', plug: 'plug' });
    expect(planOf(astray).off).toEqual([]);
  });
});

describe('the plan against an integer program', () => {
  it('has the objective of HiGHS for every board of the library with every case of it', () => {
    const boards = [WIRED.board, everyConnector()];
    const cases = [WIRED.case.leads, LEAD_TYPES.map(({ lead: type }) => ({ ...type, name: type.id }))];
    for (const board of boards)
      for (const leads of cases) {
        const build: Build = { ...BARE, board, case: { ...WIRED.case, leads: [...leads] }, extras: [] };
        const { problem, answer } = solve(problemOf(build, []), SEARCH_LIMITS);
        expect(answer.kind).toBe('best');
        expect(answer.cost).toEqual(reference(instanceOf(problem)));
      }
  });
});

describe('what the plan weighs', () => {
  const power = partLead('power', 'power-switch', grid(1, 2), PAIR);
  const led = partLead('led', 'power-led', grid(1, 2), LED);
  const speaker = partLead('speaker', 'speaker', grid(1, 2), { plus: '1', minus: '2' });

  it('leaves a plug off rather than on pins where it serves nothing', () => {
    const plan = planOf(
      bench([posts('fan', grid(1, 3), { pins: ['ground', 'supply-12v', 'fan-tach'] })], [power]),
    );
    expect(plan.seats).toEqual([]);
    expect(plan.off).toEqual([{ lead: 'power', plug: 'plug' }]);
  });

  it('seats the power switch before anything else where two plugs want one place', () => {
    const panel = posts('panel', grid(1, 3), { pins: ['power-led-feed', 'ground', 'power-switch-input'] });
    const plan = planOf(bench([panel], [led, power]));
    expect(plan.off).toEqual([{ lead: 'led', plug: 'plug' }]);
    expect(plan.cost).toMatchObject({ essentialUnserved: 0, unserved: 1 });
  });

  it('turns a plug only where it has to', () => {
    const there = planOf(
      bench([posts('p', grid(1, 2), { pins: ['power-led-feed', 'power-led-sink'] })], [led]),
    );
    const back = planOf(
      bench([posts('p', grid(1, 2), { pins: ['power-led-sink', 'power-led-feed'] })], [led]),
    );
    expect(there.seats.map(({ turn }) => turn)).toEqual([0]);
    expect(back.seats.map(({ turn }) => turn)).toEqual([180]);
  });

  it('puts a rear fan on the rear header, though the front one is free too and easier to reach', () => {
    const fan = {
      ...partLead('fan', 'fan', grid(1, 3), { ground: '1', supply: '2', tach: '3' }),
      name: 'Rear fan',
    };
    const pins = ['ground', 'supply-12v', 'fan-tach'] as const;
    const headers = [
      posts('front', grid(1, 3), { pins, print: 'FRONT_FAN' }),
      posts('rear', grid(1, 3), { pins, print: 'FAN BACK', place: { xMm: 50, yMm: 50, turn: 0 } }),
      posts('beside', grid(1, 3), { place: { xMm: 60, yMm: 50, turn: 0 } }),
    ];
    expect(planOf(bench(headers, [fan])).seats.map(({ connector }) => connector)).toEqual(['rear']);
  });

  it('leaves a plug where it sits when another place is no better', () => {
    const pins = ['power-switch-input', 'ground'] as const;
    const two = [
      posts('one', grid(1, 2), { pins }),
      posts('two', grid(1, 2), { pins, place: { xMm: 50, yMm: 0, turn: 0 } }),
    ];
    const plan = planOf(bench(two, [power], [seat('power', 'two')]));
    expect(plan.seats).toEqual([seat('power', 'two')]);
  });

  it('has nothing to seat where there is no lead, no connector, or no wire', () => {
    const panel = posts('panel', grid(1, 2), { pins: ['power-switch-input', 'ground'] });
    const empty = { seats: [], off: [], proved: true };
    expect(planOf(bench([panel], []))).toMatchObject(empty);
    expect(planOf(bench([panel], [lead('bare', grid(1, 2))]))).toMatchObject(empty);
    expect(planOf(bench([], [power, speaker]))).toMatchObject({
      seats: [],
      off: [{ lead: 'power' }, { lead: 'speaker' }],
    });
  });
});

describe('when not everything can be served', () => {
  // Two LEDs want the one feed; a reset switch could have either ground and is not to blame.
  const panel = posts('panel', grid(2, 2), {
    pins: ['power-led-feed', 'reset-switch-input', 'power-led-sink', 'ground'],
  });
  const leds = ['one', 'two'].map((id) => partLead(id, 'power-led', grid(1, 2), LED));
  const reset = partLead('reset', 'reset-switch', grid(1, 2), PAIR);
  const wide = partLead('wide', 'power-led', grid(1, 3), { anode: '1', cathode: '3' });

  it('names the fewest plugs that cannot go together, and the pins they want', () => {
    const problem = problemOf(bench([panel], [reset, ...leds]), []);
    const conflict = conflictAbout(problem, 2);
    expect(conflict.plugs.map((ref) => ref.lead)).toEqual(['one', 'two']);
    expect(conflict.pins).toContainEqual({ connector: 'panel', pin: '1' });
    expect(conflict.pins).not.toContainEqual({ connector: 'panel', pin: '2' });
  });

  it('names a plug alone where the board has no place for it: contacts three apart, pins two apart', () => {
    const problem = problemOf(bench([panel], [reset, wide]), []);
    expect(conflictAbout(problem, 1)).toEqual({
      plugs: [{ lead: 'wide', plug: 'plug' }],
      pins: [],
      kept: [],
      proved: true,
    });
  });

  it('gives a set that is impossible, and possible when any one is taken away, as HiGHS has it too', () => {
    const crowded = bench(
      [
        posts('panel', grid(1, 5), {
          pins: ['power-led-feed', 'ground', 'power-led-feed', 'ground', 'power-led-feed'],
        }),
      ],
      ['a', 'b', 'c', 'd'].map((id) => partLead(id, 'power-led', grid(1, 2), LED)),
    );
    const problem = problemOf(crowded, []);
    const conflict = conflictAbout(problem, 3);
    const slots = conflict.plugs.map((ref) =>
      problem.groups.findIndex(({ group }) => group.lead.id === ref.lead),
    );
    const served = (of: readonly number[]) =>
      instanceOf({
        ...problem,
        groups: of
          .flatMap((slot) => problem.groups[slot] ?? [])
          .map((group) => ({ ...group, ways: group.ways.slice(0, -1) })),
      });
    expect(reference(served(slots))).toBe('impossible');
    for (const slot of slots) {
      const fewer = slots.filter((each) => each !== slot);
      expect(reference(served(fewer))).not.toBe('impossible');
      expect(search(served(fewer)).kind).toBe('best');
    }
    expect(
      goTogether(
        { ...problem, groups: problem.groups.map((g) => ({ ...g, ways: g.ways.slice(0, -1) })) },
        slots,
      ),
    ).toBe(false);
  });
});

/** A board with every connector of the library on it, far enough apart. */
function everyConnector(): Build['board'] {
  return {
    ...WIRED.board,
    outline: { widthMm: 900, depthMm: 900 },
    connectors: CONNECTOR_TYPES.map(({ id, connector }, index) => ({
      ...connector,
      id,
      print: id,
      place: { xMm: 20 + 90 * (index % 9), yMm: 20 + 60 * Math.floor(index / 9), turn: 0 },
    })),
  };
}
