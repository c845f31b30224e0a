import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { courseOf, STEPS, type StepId } from '../../../boards/diagnosis/start-chain/course';
import { type Machine, type Pull, SOUND } from '../../../boards/diagnosis/start-chain/machine';
import { MANNERS, type Manner } from '../../../boards/diagnosis/start-chain/manner';
import { SIGNS_OF_END } from '../../../boards/diagnosis/start-chain/signs-of-end';
import { TIMINGS } from '../../../boards/diagnosis/start-chain/timings';

const USUAL: Manner = { heldAtMains: 'starts', unseenFan: 'goes-off', clearing: 'stays-off' };
const start = (wrong: Partial<Machine> = {}, manner: Partial<Manner> = {}) =>
  courseOf({ ...SOUND, ...wrong }, { ...USUAL, ...manner });
const when = (id: StepId) => start().steps.find((step) => step.id === id);

describe('a sound start against the published timings', () => {
  // ATX 3.0 multi-rail power supply design guide (336521), Table 4-9.
  it('has standby within 2 s of mains (T0)', () => {
    expect(when('standby')).toMatchObject({ mostMs: 2000 });
  });

  // Chipset datasheets: 16 ms; design guide of the front panel 2.2.2.4: a press lasts 50 ms at least.
  it('believes a press after 16 ms, which the shortest press outlasts', () => {
    expect(when('power-low')).toMatchObject({ leastMs: 16, mostMs: 16 });
    expect(TIMINGS.press.leastMs).toBeGreaterThan(TIMINGS.debounce.mostMs);
  });

  // T1 below 500 ms and T3 100 to 500 ms together: PS_ON# to PWR_OK in 1 s at most, and 100 ms at least.
  it('has PWR_OK between 100 ms and 1 s after PS_ON#', () => {
    const [asked, good] = [when('ps-on'), when('power-good')];
    expect((good?.leastMs ?? 0) - (asked?.leastMs ?? 0)).toBe(100);
    expect((good?.mostMs ?? 0) - (asked?.mostMs ?? 0)).toBe(1000);
  });

  // The tightest bounds since 2020 (T1 below 200 ms, T3 100 to 250 ms) lie within what is used here.
  it('leaves room for supplies of today', () => {
    expect(TIMINGS.rails.mostMs).toBeGreaterThanOrEqual(200);
    expect(TIMINGS.powerGood.leastMs).toBeLessThanOrEqual(100);
    expect(TIMINGS.powerGood.mostMs).toBeGreaterThanOrEqual(250);
  });

  it('goes through every step in order, and runs', () => {
    const { steps, end, byItself } = start();
    expect(steps.map(({ id }) => id)).toEqual(STEPS);
    expect(end).toBe('runs');
    expect(byItself).toBe(false);
  });
});

describe('what stops a start, and where', () => {
  test.each([
    ['no mains', { mains: 'off' }, undefined, 'no-mains'],
    ['a dead supply', { supply: 'dead' }, 'mains', 'no-standby'],
    ['the large plug off the board', { standby: 'cut-off' }, 'mains', 'no-standby'],
    ['standby overloaded', { standby: 'overloaded' }, 'mains', 'standby-sags'],
    // Teaching texts, restated: a power switch that is off its pins does nothing on the press.
    ['the power lead off', { power: { rest: 'free', pressed: 'free' } }, 'standby', 'not-asked'],
    ['a worn button', { power: { rest: 'free', pressed: 'now-and-then' } }, 'standby', 'asked-now-and-then'],
    ['the start logic dead', { startLogic: 'dead' }, 'power-low', 'not-heard'],
    ['settings being cleared', { settings: 'being-cleared' }, 'power-low', 'not-heard'],
    ['a latched supply', { supply: 'latched' }, 'ps-on', 'no-rails'],
    ['a shorted rail', { rails: 'shorted' }, 'ps-on', 'trips'],
    ['a weak supply', { supply: 'weak' }, 'rails', 'sags'],
    // The same texts: reset held closed runs the fans and shows nothing.
    ['reset held', { reset: { rest: 'held', pressed: 'held' } }, 'power-good', 'held-in-reset'],
    // The same texts: without the processor's supply the fans run, and there is no beep and no picture.
    ['no processor supply', { processorPower: 'missing' }, 'reset-released', 'no-code'],
    ['unusable memory', { memory: 'unusable' }, 'reset-released', 'memory-missing'],
    ['no cooler', { cooling: 'none' }, 'reset-released', 'overheats-soon'],
    // The same texts: reset closed now and then restarts the machine.
    [
      'a loose reset wire',
      { reset: { rest: 'now-and-then', pressed: 'held' } },
      'reset-released',
      'restarts',
    ],
    ['a fan that is not seen', { processorFan: 'not-seen' }, 'reset-released', 'fan-stops-it'],
    ['a cooler that touches badly', { cooling: 'poor' }, 'checks-passed', 'overheats-late'],
  ] satisfies readonly (readonly [string, Partial<Machine>, StepId | undefined, string])[])(
    '%s',
    (_, wrong, last, end) => {
      const course = start(wrong);
      expect(course.steps.at(-1)?.id).toBe(last);
      expect(course.end).toBe(end);
    },
  );

  // ACPI 6.0, 4.8.2.2.1: power held for four seconds or more is an unconditional off.
  it('starts by itself with power held, and is forced off after four seconds at least', () => {
    const course = start({ power: { rest: 'held', pressed: 'held' } });
    expect(course).toMatchObject({ end: 'forced-off', byItself: true });
    expect(course.endsAfter?.leastMs).toBe(4016);
  });

  it('with power held and a board that waits for an edge, nothing happens on the press', () => {
    const course = start({ power: { rest: 'held', pressed: 'held' } }, { heldAtMains: 'waits' });
    expect(course).toMatchObject({ end: 'not-heard', byItself: false });
  });

  it('is no different for a reset button that only works when pressed', () => {
    expect(start({ reset: { rest: 'free', pressed: 'free' } }).end).toBe('runs');
  });
});

const pull = fc.constantFrom<Pull>('free', 'now-and-then', 'held');
const input = fc.record({ rest: pull, pressed: pull });
const anyMachine: fc.Arbitrary<Machine> = fc.record({
  mains: fc.constantFrom('on', 'off'),
  supply: fc.constantFrom('sound', 'dead', 'latched', 'weak'),
  standby: fc.constantFrom('sound', 'overloaded', 'cut-off'),
  startLogic: fc.constantFrom('sound', 'dead'),
  settings: fc.constantFrom('kept', 'being-cleared'),
  power: input,
  reset: input,
  rails: fc.constantFrom('sound', 'shorted'),
  processorPower: fc.constantFrom('joined', 'missing'),
  processor: fc.constantFrom('sound', 'dead'),
  memory: fc.constantFrom('sound', 'unusable'),
  processorFan: fc.constantFrom('seen', 'not-seen'),
  cooling: fc.constantFrom('sound', 'poor', 'none'),
});
const anyManner = fc.constantFrom(...MANNERS).map(({ manner }) => manner);

describe('any machine', () => {
  it('goes through the steps in order, none skipped, none earlier than the one before since its clock began', () => {
    fc.assert(
      fc.property(anyMachine, anyManner, (machine, manner) => {
        const { steps } = courseOf(machine, manner);
        expect(steps.map(({ id }) => id)).toEqual(STEPS.slice(0, steps.length));
        for (const [at, step] of steps.entries()) {
          expect(step.leastMs).toBeLessThanOrEqual(step.mostMs);
          const before = steps[at - 1];
          // The press starts the clock anew.
          if (before && step.id !== 'power-low') expect(step.leastMs).toBeGreaterThanOrEqual(before.leastMs);
        }
      }),
    );
  });

  it('never gets further when one more thing is wrong, unless that is what starts it', () => {
    fc.assert(
      fc.property(anyMachine, anyManner, (machine, manner) => {
        const better = { ...machine, supply: 'sound', rails: 'sound', memory: 'sound' } as const;
        expect(courseOf(machine, manner).steps.length).toBeLessThanOrEqual(
          courseOf(better, manner).steps.length,
        );
      }),
    );
  });
});

describe('what boards do differently', () => {
  it('is shared out completely', () => {
    expect(MANNERS.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  it('looks like something, unless it runs', () => {
    for (const [end, signs] of Object.entries(SIGNS_OF_END)) {
      for (const chance of Object.values(signs)) {
        expect(chance).toBeGreaterThan(0);
        expect(chance).toBeLessThan(1);
      }
      if (end !== 'runs') expect(Math.max(...Object.values(signs))).toBeGreaterThanOrEqual(0.35);
    }
  });
});
