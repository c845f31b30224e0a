import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
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

/** `npm run trust` asks for more. */
const SEQUENCES = Number(process.env.LEADWRIGHT_SEQUENCES ?? 2_000);

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

/** A build, a few things that may be put into it, and up to sixty steps. */
const session = fc.record({
  build: arbitraryBuild,
  lead: arbitraryLead('spare'),
  cable: arbitraryCable('spare'),
  unit: arbitraryUnit('spare'),
  connector: arbitraryConnector('spare'),
  board: arbitraryBoard,
  case: arbitraryCase,
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

describe('any sequence of commands', () => {
  it('is drawn from every command there is', () => {
    expect(Object.keys(MAKERS).sort()).toEqual([...NAMES].sort());
  });

  it('keeps the build sound, saves and opens as the same, and is undone and redone to the byte', () => {
    const tallies = new Map<CommandName, Tally>();
    fc.assert(
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
      { seed: 20_260_301, numRuns: SEQUENCES },
    );
    const total = [...tallies.values()].reduce(
      (sum, { asked, changed }) => ({ asked: sum.asked + asked, changed: sum.changed + changed }),
      { asked: 0, changed: 0 },
    );
    expect(total.changed / total.asked).toBeGreaterThan(0.75);
    for (const name of NAMES) expect(tallies.get(name)?.changed, name).toBeGreaterThan(60);
  }, 1_800_000);
});
