import { shortSum } from '../../base/short-sum';
import type { Build, Seat } from '../../document/build';
import type { BenchStep } from './bench-steps';
import { standoffSum } from './standoff-lines';

/**
 * What a step is remembered by once it is done. It names the place as well: a plug that has been moved since,
 * what was measured on it or beside it, and the look over everything are to be done again.
 */
export function tickOf(step: BenchStep): string {
  switch (step.kind) {
    case 'chore':
      return step.seats ? `${step.id} ${seatsSum(step.seats)}` : step.id;
    case 'standoffs':
      return `${step.id} ${standoffSum(step.known)}`;
    case 'plug': {
      const { connector, at, turn } = step.seated.seat;
      return `${step.id} ${connector} ${at.join(',')} ${turn}`;
    }
    case 'meter': {
      const [reading] = step.step.readings;
      const pins = reading ? [reading.red, reading.black] : [];
      const sum = step.seats ? [seatsSum(step.seats)] : [];
      return [step.id, ...pins.map(({ connector, pin }) => `${connector}.${pin}`), ...sum].join(' ');
    }
  }
}

/** Some seats in any order as a short number: with another plug, or one elsewhere, it is another one. */
function seatsSum(seats: readonly Seat[]): string {
  const texts = seats.map(({ lead, plug, connector, at, turn }) =>
    [lead, plug, connector, ...at, turn].join(' '),
  );
  return shortSum(texts.toSorted().join());
}

/** Which of the steps are done, by their ids. */
export function doneOf(build: Build, steps: readonly BenchStep[]): ReadonlySet<string> {
  const ticks = new Set(build.done);
  return new Set(steps.filter((step) => ticks.has(tickOf(step))).map(({ id }) => id));
}

/** Where the work goes on: the first step that is not done; undefined once all are. */
export function nextToDo(build: Build, steps: readonly BenchStep[]): BenchStep | undefined {
  const done = doneOf(build, steps);
  return steps.find(({ id }) => !done.has(id));
}
