import fc from 'fast-check';
import { expect } from 'vitest';
import { freezeDeep } from '../../../boards/base/freeze';
import type { Build } from '../../../boards/document/build';
import { parseDocument } from '../../../boards/document/parse';
import { serialize } from '../../../boards/document/serialize';
import type { Command, CommandName } from '../../../boards/edit/command';
import { COMMANDS } from '../../../boards/edit/commands';
import { type History, perform, redo, startHistory, undo, undoLabel } from '../../../boards/edit/history';
import { same } from '../../../boards/edit/same';
import {
  arbitraryBoard,
  arbitraryBuild,
  arbitraryCable,
  arbitraryCase,
  arbitraryConnector,
  arbitraryLead,
  arbitraryName,
  arbitrarySeed,
  arbitraryUnit,
} from '../arbitrary-build';
import { Dice } from '../dice';
import { MAKERS } from './command-makers';

const NAMES = COMMANDS.map(({ name }) => name);
/** Of two thousand sequences each command changes the build in so many at least, and so many of all changes are made. */
const CHANGED = { times: 60, of: 2_000, share: 0.75 };

/** Seats and ways are soon taken off by much else, and not every case has paths, so these are made more often. */
const OFTEN: readonly CommandName[] = [
  'seat-plug',
  'seat-plug',
  'seat-plug',
  'turn-plug',
  'unseat-plug',
  'change-tray-place',
  'change-tray-paths',
  'lay-runs',
  'pin-run',
  'note-standoffs',
];

const step = fc.record({
  name: fc.constantFrom(...NAMES, ...OFTEN),
  seed: arbitrarySeed,
  text: arbitraryName,
});

/** A few things that may be put into a build. */
export const SPARES = {
  lead: arbitraryLead('spare'),
  cable: arbitraryCable('spare'),
  unit: arbitraryUnit('spare'),
  connector: arbitraryConnector('spare'),
  board: arbitraryBoard,
  case: arbitraryCase,
};

/** A build, what may be put into it, and up to sixty steps. */
const session = fc.record({
  build: arbitraryBuild,
  ...SPARES,
  steps: fc.oneof(
    { weight: 3, arbitrary: fc.array(step, { maxLength: 10 }) },
    { weight: 1, arbitrary: fc.array(step, { maxLength: 60, size: '+1' }) },
  ),
});

type Session = typeof session extends fc.Arbitrary<infer T> ? T : never;

/** How often each command was asked for, and how often it changed the build. */
interface Tally {
  asked: number;
  changed: number;
}

function commandFor(
  name: CommandName,
  build: Build,
  { steps: _, ...pool }: Session,
  dice: Dice,
  text: string,
) {
  const args: unknown = MAKERS[name]({ ...pool, build, dice, text });
  return args === undefined ? undefined : ({ name, args } as Command);
}

/** Carries all steps of a session out; `afterEach` sees the build after every one that changed it. */
function carryOut(
  given: Session,
  tallies: Map<CommandName, Tally>,
  afterEach: (build: Build) => void,
): History {
  let history = startHistory(freezeDeep(given.build));
  for (const { name, seed, text } of given.steps) {
    const command = commandFor(name, history.present, given, new Dice(seed), text);
    if (command === undefined) continue;
    const tally = tallies.get(name) ?? { asked: 0, changed: 0 };
    tallies.set(name, tally);
    tally.asked += 1;
    const result = perform(history, command);
    if (!result.ok || result.value === history) continue;
    tally.changed += 1;
    history = result.value;
    expect(undoLabel(history)).toMatch(/^[A-Z][a-z]+ /);
    afterEach(history.present);
  }
  return history;
}

function back(history: History): History {
  let at = history;
  while (at.past.length > 0) at = undo(at);
  return at;
}

function forth(history: History): History {
  let at = history;
  while (at.future.length > 0) at = redo(at);
  return at;
}

/**
 * Random sequences of commands: after each the build is sound, is saved and opens as the same; undone, all is as at
 * first to the byte, and redone, as at last.
 *
 * @returns how many were carried out; one that did not hold, with the seed and path that fast-check finds it by again;
 *   commands that hardly came to anything
 */
export function anySequence(
  sequences: number,
  seed: number,
): { readonly tried: number; readonly failures: readonly string[] } {
  const tallies = new Map<CommandName, Tally>();
  const found = fc.check(
    fc.property(session, (given) => {
      const first = serialize(given.build);
      const history = carryOut(given, tallies, (build) => {
        const opened = parseDocument(serialize(build));
        if (!opened.ok || !same(opened.value, build)) expect(opened).toEqual({ ok: true, value: build });
      });
      const last = serialize(history.present);
      const undone = back(history);
      expect(undone.present).toBe(given.build);
      expect(serialize(undone.present)).toBe(first);
      const redone = forth(undone);
      expect(redone.present).toBe(history.present);
      expect(serialize(redone.present)).toBe(last);
      const opened = parseDocument(last);
      expect(opened.ok && serialize(opened.value)).toBe(last);
    }),
    { seed, numRuns: sequences },
  );
  if (found.failed)
    return { tried: found.numRuns, failures: [fc.defaultReportMessage(found) ?? `seed ${seed}`] };
  return { tried: found.numRuns, failures: rare(tallies, sequences).map((name) => `seed ${seed}: ${name}`) };
}

/** What was asked for and came to nothing too often: a sequence of it would try nothing. */
function rare(tallies: ReadonlyMap<CommandName, Tally>, sequences: number): readonly string[] {
  const all = [...tallies.values()];
  const [asked, changed] = [
    all.reduce((sum, tally) => sum + tally.asked, 0),
    all.reduce((sum, tally) => sum + tally.changed, 0),
  ];
  const least = (CHANGED.times * sequences) / CHANGED.of;
  const seldom = NAMES.filter((name) => (tallies.get(name)?.changed ?? 0) <= least);
  return [
    ...seldom.map((name) => `${name} changed the build ${tallies.get(name)?.changed ?? 0} times only`),
    ...(changed <= asked * CHANGED.share ? [`${changed} of ${asked} commands changed the build`] : []),
  ];
}
