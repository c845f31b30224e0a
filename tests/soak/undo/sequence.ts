import { stripVTControlCharacters } from 'node:util';
import { serialize } from '../../../boards/document/serialize';
import { applyCommand } from '../../../boards/edit/apply';
import { Dice } from '../../boards/dice';
import { clear, goTo, isCovered } from '../gestures/controls';
import { AREA_KEYS, type Gesture, type Made } from '../gestures/gesture';
import { GESTURES } from '../gestures/index';
import { type BenchWindow, buildOf, shownOf } from './bench-window';

/** A gesture of a sequence: with the same seed it does the same to the same window. */
export interface Drawn {
  readonly gesture: Gesture;
  readonly seed: number;
}

/** A gesture that was made. */
interface Done extends Drawn {
  readonly said: string;
  readonly changed: boolean;
  readonly ms: number;
}

export interface Played {
  readonly done: readonly Done[];
  /** Steps of undo that they came to. */
  readonly steps: number;
  /** Gestures that could not be carried through, and why: that is for the robot to mend, not for the program. */
  readonly stuck: readonly string[];
  /** What did not hold. */
  readonly failures: readonly string[];
}

/** As many draws as there are gestures to be made, and more for those that find nothing to do. */
export function drawSequence(seed: number, gestures: number): readonly Drawn[] {
  const dice = new Dice(seed);
  return Array.from({ length: 3 * gestures }, () => {
    const gesture = dice.pick(dice.pick(GESTURES) ?? []);
    if (gesture === undefined) throw new Error('An area without gestures');
    return { gesture, seed: dice.below(2 ** 31) };
  });
}

interface Sequence {
  readonly window: BenchWindow;
  /** What the file holds at the beginning. */
  readonly first: string;
  readonly drawn: readonly Drawn[];
  /** So many of them are made. */
  readonly gestures: number;
  /** Where undo and redo are done. */
  readonly seed: number;
  /** What the window complained of since it was last asked. */
  readonly complaints: () => readonly string[];
}

/** Plays a sequence and puts to the test what the row promises of it. */
export async function play(sequence: Sequence): Promise<Played> {
  const { window, first, seed, complaints } = sequence;
  const failures: string[] = [];
  await window.open(first, `bench-${seed}.build.json`);
  const { done, stuck } = await makeGestures(sequence, failures);
  let steps = 0;
  if (failures.length === 0) {
    try {
      steps = await undoAndRedo(sequence, failures);
    } catch (error) {
      failures.push(`stopped: ${wordsFor(error)}`);
    }
  }
  failures.push(...complaints());
  return { done, steps, stuck, failures };
}

async function makeGestures({ window, drawn, gestures }: Sequence, failures: string[]) {
  const done: Done[] = [];
  const stuck: string[] = [];
  for (const { gesture, seed } of drawn) {
    if (done.length === gestures || failures.length > 0) break;
    const began = performance.now();
    const before = await window.state();
    const made = await makeOne(window, { gesture, seed }, failures, stuck);
    await clear(window.page);
    if (made === undefined) continue;
    const changed = (await window.state()) !== before;
    done.push({ gesture, seed, said: made.said, changed, ms: performance.now() - began });
  }
  return { done, stuck };
}

async function makeOne(
  window: BenchWindow,
  { gesture, seed }: Drawn,
  failures: string[],
  stuck: string[],
): Promise<Made | undefined> {
  const { page } = window;
  const saved = async () => buildOf(await window.saved());
  for (let times = 0; ; times++) {
    try {
      const made = await gesture.make({ page, dice: new Dice(seed), saved });
      if (made !== undefined) await compare(window, made, failures);
      return made;
    } catch (error) {
      await page.mouse.up();
      // A window that the gesture before it opened was fetched late, and lay over everything.
      if (times === 0 && (await isCovered(page))) {
        await clear(page);
        continue;
      }
      stuck.push(`${gesture.name}: ${wordsFor(error)}`);
      return undefined;
    }
  }
}

/** The file after a gesture is the model before it with the edit that the gesture stands for. */
async function compare(window: BenchWindow, { means, said }: Made, failures: string[]): Promise<void> {
  if (means === undefined) return;
  const { before, command } = means;
  const result = command === null ? undefined : applyCommand(before, command);
  const after = result?.ok ? result.value : before;
  expectSame(failures, `after “${said}”`, await window.saved(), serialize(after));
}

async function undoAndRedo({ window, first, seed }: Sequence, failures: string[]): Promise<number> {
  const { page } = window;
  const dice = new Dice(seed);
  const somewhere = async () => {
    // By way of another area, so that the focus is left in no line.
    const [from, to] = [dice.pick(Object.values(AREA_KEYS)), dice.pick(Object.values(AREA_KEYS))];
    for (const key of [AREA_KEYS.wire, from, to]) if (key !== undefined) await goTo(page, key);
  };

  await somewhere();
  const last = await window.saved();
  expectSame(failures, 'the last build, read and written again', serialize(buildOf(last)), last);
  expectSame(
    failures,
    'the last build as it is shown',
    await listed(window.shown()),
    shownOf(last).join('\n'),
  );

  // Where the last gesture took something back, that may still be redone.
  const goesOn = await isEnabled(window, 'Redo');
  await somewhere();
  await toTheEnd(window, 'Undo');
  const steps = await window.steps();
  expectSame(failures, 'everything undone', await window.saved(), first);

  await somewhere();
  await press(window, 'Redo', steps);
  if ((await isEnabled(window, 'Redo')) !== goesOn)
    failures.push(`After ${steps} steps there is ${goesOn ? 'nothing' : 'something'} to be redone`);
  expectSame(failures, 'everything redone', await window.saved(), last);

  await somewhere();
  await press(window, 'Undo', Math.floor(steps / 2));
  const undone = await window.steps();
  if (undone !== Math.floor(steps / 2)) failures.push(`${undone} of ${steps} steps are half of them`);
  const half = await window.saved();
  expectSame(failures, 'half of it, read and written again', serialize(buildOf(half)), half);
  const shown = await listed(window.shown());
  expectSame(failures, 'half of it as it is shown', shown, shownOf(half).join('\n'));
  await window.openAgain(`half-${seed}.build.json`);
  expectSame(failures, 'half of it, opened from the disk', await listed(window.shown()), shown);
  expectSame(failures, 'half of it, opened and saved', await window.saved(), half);
  return steps;
}

const listed = async (lines: Promise<readonly string[]>) => (await lines).join('\n');

const KEYS = { Undo: 'Control+z', Redo: 'Control+y' } as const;

/** Whether the menu offers a step back, or forward. */
async function isEnabled({ page }: BenchWindow, which: 'Undo' | 'Redo'): Promise<boolean> {
  await page.getByRole('button', { name: 'Edit', exact: true }).click();
  const item = page.getByRole('menuitem', { name: new RegExp(`^${which}\\b`) });
  const enabled = (await item.getAttribute('aria-disabled')) !== 'true';
  await clear(page);
  return enabled;
}

const AT_ONCE = 12;

async function toTheEnd(window: BenchWindow, which: 'Undo' | 'Redo'): Promise<void> {
  while (await isEnabled(window, which)) await press(window, which, AT_ONCE);
}

async function press({ page }: BenchWindow, which: 'Undo' | 'Redo', times: number): Promise<void> {
  for (let at = 0; at < times; at++) await page.keyboard.press(KEYS[which]);
}

/** Says where two texts part; whole builds would be too long to be read. */
function expectSame(failures: string[], what: string, is: string, expected: string): void {
  if (is === expected) return;
  const [lines, others] = [is.split('\n'), expected.split('\n')];
  const at = lines.findIndex((line, index) => line !== others[index]);
  const line = at < 0 ? lines.length : at;
  failures.push(
    `${what}: line ${line + 1} is ${quoted(lines[line])}, expected ${quoted(others[line])} (${lines.length} lines, ${others.length} expected)`,
  );
}

const quoted = (line: string | undefined) =>
  line === undefined ? 'not there' : `“${line.trim().slice(0, 160)}”`;

function wordsFor(error: unknown): string {
  const words = stripVTControlCharacters(error instanceof Error ? error.message : String(error));
  const lines = words.split('\n').map((line) => line.trim());
  // What is in the way of a press stands at the end of what was tried.
  const inTheWay = lines.findLast((line) => line.includes('intercepts pointer events'));
  return [...lines.slice(0, 3), ...(inTheWay === undefined ? [] : [inTheWay])].join(' ').slice(0, 500);
}
