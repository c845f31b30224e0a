import type { Machine, Pull } from './machine';
import type { Manner } from './manner';
import { after, type SpanMs, TIMINGS } from './timings';

/** What happens in a start, in this order. */
export const STEPS = [
  'mains',
  'standby',
  'power-low',
  'ps-on',
  'rails',
  'power-good',
  'reset-released',
  'checks-passed',
] as const;
export type StepId = (typeof STEPS)[number];

/** How a start ends. Closed: signs-of-end.ts says what each looks like. */
export type EndId =
  | 'no-mains'
  | 'no-standby'
  | 'standby-sags'
  | 'not-asked'
  | 'asked-now-and-then'
  | 'not-heard'
  | 'no-rails'
  | 'trips'
  | 'sags'
  | 'held-in-reset'
  | 'no-code'
  | 'memory-missing'
  | 'fan-stops-it'
  | 'fan-complained-of'
  | 'forced-off'
  | 'overheats-soon'
  | 'overheats-late'
  | 'restarts'
  | 'runs';

/** A step and when it is done: the first two from mains, the others from the press, or from standby where none was needed. */
interface Step extends SpanMs {
  readonly id: StepId;
}

/** One start, from mains to how it ends. */
export interface Course {
  readonly steps: readonly Step[];
  readonly end: EndId;
  /** When a running machine comes to that end; undefined where the last step already says it. */
  readonly endsAfter?: SpanMs;
  /** Whether it came on without a press. */
  readonly byItself: boolean;
}

const NOW: SpanMs = { leastMs: 0, mostMs: 0 };

/** What a machine does when mains comes on and power is pressed once, on a board of a certain manner. */
export function courseOf(machine: Machine, manner: Manner): Course {
  const steps: Step[] = [];
  let byItself = false;
  let at = NOW;
  const done = (id: StepId, ...spans: readonly SpanMs[]) => {
    at = after(at, ...spans);
    steps.push({ id, leastMs: at.leastMs, mostMs: at.mostMs });
  };
  const ends = (end: EndId, endsAfter?: SpanMs): Course =>
    endsAfter === undefined ? { steps, end, byItself } : { steps, end, endsAfter, byItself };

  if (machine.mains === 'off') return ends('no-mains');
  done('mains');
  if (machine.supply === 'dead' || machine.standby === 'cut-off') return ends('no-standby');
  if (machine.standby === 'overloaded') return ends('standby-sags');
  done('standby', TIMINGS.standby);

  at = NOW;
  const held = machine.power.rest === 'held';
  if (held && manner.heldAtMains === 'waits') return ends('not-heard');
  byItself = machine.power.rest !== 'free';
  const asked: Pull = byItself ? 'held' : machine.power.pressed;
  if (asked === 'free') return ends('not-asked');
  if (asked === 'now-and-then') return ends('asked-now-and-then');
  done('power-low', TIMINGS.debounce);
  const clearing = machine.settings === 'being-cleared' ? manner.clearing : undefined;
  if (machine.startLogic === 'dead' || clearing === 'stays-off') return ends('not-heard');
  done('ps-on');
  if (machine.supply === 'latched') return ends('no-rails');
  if (machine.rails === 'shorted' || clearing === 'twitches') return ends('trips', after(at, TIMINGS.rails));
  done('rails', TIMINGS.rails);
  if (machine.supply === 'weak') return ends('sags', after(at, TIMINGS.powerGood));
  done('power-good', TIMINGS.powerGood);
  // Counted from the press: the override runs from the debounced edge, whatever the machine does meanwhile.
  if (held) return ends('forced-off', after(TIMINGS.debounce, TIMINGS.override));
  if (machine.reset.rest === 'held') return ends('held-in-reset');
  done('reset-released', TIMINGS.resetRelease);

  const dead = machine.processorPower === 'missing' || machine.processor === 'dead';
  if (dead || clearing === 'shows-nothing') return ends('no-code');
  if (machine.memory === 'unusable') return ends('memory-missing');
  if (machine.cooling === 'none') return ends('overheats-soon', after(at, TIMINGS.uncooled));
  if (machine.reset.rest === 'now-and-then') return ends('restarts');
  if (machine.processorFan === 'not-seen') {
    if (manner.unseenFan === 'goes-off') return ends('fan-stops-it', after(at, TIMINGS.fanWatch));
    if (manner.unseenFan === 'complains') return ends('fan-complained-of', after(at, TIMINGS.checks));
  }
  done('checks-passed', TIMINGS.checks);
  if (machine.cooling === 'poor') return ends('overheats-late', after(at, TIMINGS.badlyCooled));
  return ends('runs');
}
