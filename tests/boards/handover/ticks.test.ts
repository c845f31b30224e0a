import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Build, BuildZ } from '../../../boards/document/build';
import { StepIdZ } from '../../../boards/document/text';
import { applyCommand } from '../../../boards/edit/apply';
import { type BenchStep, benchStepsOf } from '../../../boards/handover/steps/bench-steps';
import { doneOf, nextToDo, tickOf } from '../../../boards/handover/steps/ticks';
import { arbitraryBuild } from '../arbitrary-build';
import { demo } from '../findings/demo';

const WIRED = demo('wired');

function stepsOf(build: Build): readonly BenchStep[] {
  const steps = benchStepsOf(build);
  if (!steps.ok) throw new Error('A ring');
  return steps.value;
}

function ticked(build: Build, steps: readonly BenchStep[], done = true): Build {
  const result = applyCommand(build, { name: 'tick-steps', args: { steps: steps.map(tickOf), done } });
  if (!result.ok) throw new Error('Not ticked');
  return result.value;
}

describe('ticks', () => {
  it('of any build can be kept, and no two steps have the same', () => {
    fc.assert(
      fc.property(arbitraryBuild, (build) => {
        const ticks = stepsOf(build).map(tickOf);
        expect(new Set(ticks).size).toBe(ticks.length);
        for (const tick of ticks) expect(StepIdZ.safeParse(tick).success, tick).toBe(true);
      }),
    );
  });

  it('of any steps, the next to do is the first without one', () => {
    const steps = stepsOf(WIRED);
    fc.assert(
      fc.property(fc.subarray([...steps]), (some) => {
        const build = ticked(WIRED, some);
        expect([...doneOf(build, steps)].sort()).toEqual(some.map(({ id }) => id).sort());
        expect(nextToDo(build, steps)).toBe(steps.find((step) => !some.includes(step)));
      }),
    );
  });

  it('taken away leave the build as it was', () => {
    const steps = stepsOf(WIRED);
    expect(ticked(ticked(WIRED, steps), steps, false)).toEqual(WIRED);
  });

  it('of a plug and of what is measured on it go when the plug is turned, and come back with it', () => {
    const steps = stepsOf(WIRED);
    const all = ticked(WIRED, steps);
    const turn = { name: 'turn-plug', args: { lead: 'power-led', plug: 'plug', by: 180 } } as const;
    const turned = applyCommand(all, turn);
    if (!turned.ok) throw new Error('Not turned');
    const todo = stepsOf(turned.value).filter(
      ({ id }) => !doneOf(turned.value, stepsOf(turned.value)).has(id),
    );
    expect(todo.map(({ id }) => id).sort()).toEqual([
      'look-over',
      'meter lamp power-led led',
      'plug power-led plug',
    ]);
    const back = applyCommand(turned.value, turn);
    if (!back.ok) throw new Error('Not turned back');
    expect(nextToDo(back.value, stepsOf(back.value))).toBeUndefined();
  });

  it('of no short at a header and of the look over everything go when plugs change headers', () => {
    const steps = stepsOf(WIRED);
    const all = ticked(WIRED, steps);
    const other = { 'usb-1': 'usb-2', 'usb-2': 'usb-1' } as const;
    const seats = all.seats.map((seat) =>
      seat.connector === 'usb-1' || seat.connector === 'usb-2'
        ? { ...seat, connector: other[seat.connector] }
        : seat,
    );
    const exchanged: Build = { ...all, seats };
    const done = doneOf(exchanged, stepsOf(exchanged));
    const todo = stepsOf(exchanged).filter(({ id }) => !done.has(id));
    expect(todo.map(({ id }) => id).sort()).toEqual([
      'look-over',
      'meter supply usb-1',
      'meter supply usb-2',
      'plug card-reader plug',
      'plug front-usb plug',
    ]);
  });

  it('do not hang on the order in which plugs were seated', () => {
    const all = ticked(WIRED, stepsOf(WIRED));
    const turned: Build = { ...all, seats: all.seats.toReversed() };
    expect(nextToDo(turned, stepsOf(turned))).toBeUndefined();
  });

  it('of an older file, which names no seats there, are kept, and the step is to be done again', () => {
    const done = ['look-over', 'meter supply usb-1 usb-1.1 usb-1.7'];
    const old: Build = { ...WIRED, done };
    expect(BuildZ.parse(JSON.parse(JSON.stringify(old))).done).toEqual(done);
    expect([...doneOf(old, stepsOf(old))]).toEqual([]);
  });
});
