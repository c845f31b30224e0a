import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { applyCommand } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { findingsOf } from '../../../boards/findings/findings';
import { differencesTo, takingOver } from '../../../boards/planner/differences';
import { arrangementsOf, planOf, solve } from '../../../boards/planner/plan';
import { problemOf } from '../../../boards/planner/problem';
import { SEARCH_LIMITS } from '../../../boards/planner/search';
import { type Unserved, unservedIn } from '../../../boards/planner/ways-out';
import {
  conflictWords,
  differenceWords,
  nothingToSeatWords,
  planWords,
  wayOutWords,
} from '../../../boards/planner/words';
import { demo } from '../findings/demo';
import { bench, grid, lead, partLead, posts, seat } from '../fixtures/bench';

const SLIPS = demo('eight-slips');
const LED = { anode: '1', cathode: '2' };

function unservedOf(build: Build): readonly Unserved[] {
  return [...unservedIn(solve(problemOf(build, []), SEARCH_LIMITS), { pinned: [] })];
}

describe('a wiring beside the plan', () => {
  const plan = planOf(SLIPS);
  const differences = differencesTo(SLIPS, plan.seats);

  it('shows no difference to itself', () => {
    expect(differencesTo(SLIPS, SLIPS.seats)).toEqual([]);
  });

  it('becomes the plan when every difference is taken over, in one step', () => {
    const done = applyCommand(SLIPS, takingOver(differences));
    expect(done.ok && differencesTo(done.value, plan.seats)).toEqual([]);
    expect(done.ok && findingsOf(done.value).filter(({ severity }) => severity === 'danger')).toEqual([]);
  });

  it('takes over any one difference by itself, taking off what is in the way', () => {
    expect(differences.length).toBeGreaterThan(5);
    expect(differences.some(({ inTheWay }) => inTheWay.length > 0)).toBe(true);
    for (const difference of differences) {
      const done = applyCommand(SLIPS, takingOver([difference]));
      if (!done.ok) throw new Error(`refused: ${JSON.stringify(difference)}`);
      const left = differencesTo(done.value, plan.seats).map(({ plug }) => plug);
      expect(left).not.toContainEqual(difference.plug);
      for (const other of difference.inTheWay) expect(left).toContainEqual(other);
    }
  });

  it('is told in words that name plug and pins', () => {
    for (const difference of differences) {
      const words = differenceWords(SLIPS, difference);
      expect(words).toMatch(/^(Move|Seat|Turn|Take) .+\.$/);
      expect(words).not.toMatch(/undefined|NaN/);
    }
  });
});

describe('two plugs that change places', () => {
  const pins = ['power-switch-input', 'ground', 'reset-switch-input', 'ground'] as const;
  const leads = [
    partLead('power', 'power-switch', grid(1, 2), { a: '1', b: '2' }),
    partLead('reset', 'reset-switch', grid(1, 2), { a: '1', b: '2' }),
  ];
  const crossed = bench([posts('panel', grid(1, 4), { pins })], leads, [
    seat('power', 'panel', [0, 2]),
    seat('reset', 'panel', [0, 0]),
  ]);

  it('are exchanged in one step, though each is in the way of the other', () => {
    const plan = planOf(crossed);
    const done = applyCommand(crossed, takingOver(differencesTo(crossed, plan.seats)));
    expect(done.ok && done.value.seats).toEqual([
      seat('power', 'panel', [0, 0]),
      seat('reset', 'panel', [0, 2]),
    ]);
  });

  it('are refused as a whole where one seat is not possible or a plug is named twice', () => {
    const good = seat('power', 'panel', [0, 0]);
    const taken = applyCommand(crossed, { name: 'arrange-plugs', args: { seats: [good], off: [] } });
    expect(taken).toMatchObject({ ok: false, problem: { code: 'no-fit' } });
    const twice: Command = {
      name: 'arrange-plugs',
      args: { seats: [good], off: [{ lead: 'power', plug: 'plug' }] },
    };
    expect(applyCommand(crossed, twice)).toMatchObject({ ok: false, problem: { code: 'plug-twice' } });
  });

  it('stay the same object when they are arranged where they sit', () => {
    const same = applyCommand(crossed, {
      name: 'arrange-plugs',
      args: { seats: [...crossed.seats], off: [] },
    });
    expect(same.ok && same.value).toBe(crossed);
  });
});

describe('a power LED plug three holes wide on two pins side by side', () => {
  // The remedies are common practice, no source: the middle hole, singles, an adapter.
  const panel = posts('panel', grid(2, 2), {
    pins: ['power-led-feed', 'reset-switch-input', 'power-led-sink', 'ground'],
  });
  const row = posts('row', grid(1, 2), { pins: ['power-led-feed', 'power-led-sink'] });
  const wide = partLead('wide', 'power-led', grid(1, 3), { anode: '1', cathode: '3' });

  it('fits by its middle hole, taken apart, or by an adapter, and each is tried out', () => {
    const build = bench([row], [wide]);
    const [unserved] = unservedOf(build);
    expect(unserved?.plug).toEqual({ lead: 'wide', plug: 'plug' });
    expect(unserved?.waysOut.map(({ kind }) => kind).sort()).toEqual([
      'adapter',
      'move-contact',
      'split-plug',
    ]);
    for (const way of unserved?.waysOut ?? []) {
      expect(way.gains).toEqual([{ lead: 'wide', part: 'part' }]);
      expect(way.loses).toEqual([]);
      if (way.command === undefined) continue;
      const done = applyCommand(build, way.command);
      expect(done.ok && planOf(done.value)).toMatchObject({ off: [], cost: { unserved: 0 } });
    }
    expect(unserved && wayOutWords(build, unserved.plug, unserved.waysOut[0] as never)).toContain(
      'the power LED would work',
    );
    expect(unserved && conflictWords(build, unserved)).toContain('No free place on this board suits WIDE');
  });

  it('is offered nothing that does not help: no board has a place for two LEDs on one feed', () => {
    const build = bench(
      [panel],
      ['one', 'two'].map((id) => partLead(id, 'power-led', grid(2, 1), LED)),
    );
    const [unserved] = unservedOf(build);
    expect(unserved?.conflict.plugs.map(({ lead }) => lead)).toEqual(['one', 'two']);
    expect(unserved?.waysOut.map(({ kind }) => kind)).toEqual(['leave-off']);
    expect(unserved?.waysOut[0]).toMatchObject({
      gains: [{ lead: unserved?.plug.lead }],
      loses: [{ part: 'part' }],
    });
  });
});

describe('a plug that is kept where another belongs', () => {
  const power = { lead: 'power-switch', plug: 'plug' };
  const astray: Build = { ...demo('wired'), seats: [seat('power-switch', 'speaker')] };
  const pinned = [power];
  const [unserved] = unservedIn(solve(problemOf(astray, pinned), SEARCH_LIMITS), { pinned });

  it('is named as the reason, and letting it go as what helps', () => {
    expect(unserved).toMatchObject({ plug: { lead: 'speaker' }, conflict: { kept: pinned } });
    expect(unserved && conflictWords(astray, unserved)).toBe(
      'Speaker has no place as long as Power switch is kept.',
    );
    expect(unserved?.waysOut.map(({ kind, letGo }) => [kind, letGo])).toContainEqual(['let-go', pinned]);
    const [first] = unserved?.waysOut ?? [];
    expect(unserved && first && wayOutWords(astray, unserved.plug, first)).toBe(
      'Let Power switch go elsewhere. Then the power switch and the speaker would work.',
    );
  });
});

describe('where there is nothing to seat', () => {
  const panel = posts('panel', grid(1, 2));
  const led = partLead('led', 'power-led', grid(1, 2), LED);

  it('it is said why, and what to do', () => {
    expect(nothingToSeatWords(bench([panel], []))).toContain('this build has no leads');
    expect(nothingToSeatWords(bench([], [led]))).toContain('this board has no connectors');
    expect(nothingToSeatWords(bench([panel], [{ ...led, setAside: true }]))).toContain('set aside');
    expect(nothingToSeatWords(bench([panel], [lead('bare', grid(1, 2))]))).toContain('no lead has a part');
    expect(nothingToSeatWords(bench([panel], [led]))).toBeUndefined();
  });
});

describe('the words of a plan', () => {
  it('say that it is the best, and out of how many', () => {
    const build = { ...SLIPS, seats: [] };
    expect(planWords(planOf(build), arrangementsOf(problemOf(build, [])))).toMatch(
      /^Every plug has its place\. This is the best arrangement: about \d\.\d × 10[⁰¹²³⁴⁵⁶⁷⁸⁹]+ others are ruled out\.$/,
    );
  });
});
