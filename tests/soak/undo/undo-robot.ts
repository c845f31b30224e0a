import { readFileSync } from 'node:fs';
import type { BrowserContext } from 'playwright-core';
import { serialize } from '../../../boards/document/serialize';
import { inRoot } from '../../../electron/start/place.mjs';
import { Dice } from '../../boards/dice';
import { type BuiltWindow, withBuiltWindow } from '../built-window';
import { BenchWindow, buildOf } from './bench-window';
import { type Drawn, drawSequence, type Played, play } from './sequence';

/** What the sequences begin with. */
const DEMOS = ['every-cable', 'wired', 'letterbox', 'eight-slips'] as const;

/** What is in the way of a gesture is waited for so long; a busy machine draws late. */
const PATIENCE_MS = 15_000;
/** A window that has done so many sequences is closed for a new one. */
const PER_WINDOW = 10;
/** Sequences that failed and are made smaller, and how often that is tried. */
const SMALLER = { sequences: 2, tries: 12 };

export interface UndoRun {
  readonly sequences: number;
  readonly gestures: number;
  readonly steps: number;
  readonly failures: readonly string[];
}

/** The demo that a sequence begins with, as the program writes it. */
export function firstBuild(seed: number): string {
  const demo = new Dice(seed).pick(DEMOS) ?? DEMOS[0];
  const text = readFileSync(inRoot('boards', 'library', 'demo', `${demo}.build.json`), 'utf8');
  return serialize(buildOf(text));
}

/**
 * Plays sequences of gestures in the window as built, one seed after the other, and takes all of it back.
 * What fails is said with its seed and its gestures, as few as can soon be found.
 *
 * @param tell told how it goes
 */
export function playSequences(
  seeds: readonly number[],
  gestures: number,
  tell: (words: string) => void,
): Promise<UndoRun> {
  return withBuiltWindow(
    () => [],
    async (built) => {
      const all: Played[] = [];
      const failures: string[] = [];
      let smaller = 0;
      const windows = new Windows(built);
      for (const [at, seed] of seeds.entries()) {
        const began = performance.now();
        const drawn = drawSequence(seed, gestures);
        const played = await windows.play(seed, drawn, gestures);
        all.push(played);
        const seconds = ((performance.now() - began) / 1000).toFixed(0);
        const stuck = played.stuck.length > 0 ? `; stuck: ${played.stuck.join(' | ')}` : '';
        tell(
          `${at + 1} seed ${seed}: ${played.done.length} gestures, ${played.steps} steps, ${seconds} s${stuck}`,
        );
        if (played.failures.length > 0) {
          tell(played.failures.join('; '));
          const least = smaller++ < SMALLER.sequences ? await windows.smallest(seed, played) : played;
          failures.push(`seed ${seed}: ${least.failures.join('; ')}\n${listOf(least)}`);
          tell(failures.at(-1) ?? '');
        } else if (played.done.length < gestures) {
          failures.push(`seed ${seed}: only ${played.done.length} gestures were made`);
        }
      }
      tell(tallyOf(all));
      const sum = (of: (played: Played) => number) => all.reduce((total, each) => total + of(each), 0);
      const [made, steps] = [sum(({ done }) => done.length), sum((played) => played.steps)];
      const stuck = sum((played) => played.stuck.length);
      // A robot that is often stuck, or changes nothing, tries nothing.
      if (stuck > made / 50) failures.push(`${stuck} gestures were stuck beside ${made} that were made`);
      if (steps < made / 3) failures.push(`${made} gestures came to ${steps} steps only`);
      return { sequences: all.length, gestures: made, steps, failures };
    },
  );
}

/** Windows of the program, each for a few sequences. */
class Windows {
  readonly #built: BuiltWindow;
  #used = 0;
  #now: { readonly context: BrowserContext; readonly window: BenchWindow } | null = null;

  constructor(built: BuiltWindow) {
    this.#built = built;
  }

  async play(seed: number, drawn: readonly Drawn[], gestures: number): Promise<Played> {
    const { complaints } = this.#built;
    const window = await this.#next();
    const played = await play({
      window,
      first: firstBuild(seed),
      drawn,
      gestures,
      seed,
      complaints: () => complaints.splice(0),
    });
    // What went wrong may have left the window anyhow.
    if (played.failures.length > 0) this.#used = PER_WINDOW;
    return played;
  }

  async #next(): Promise<BenchWindow> {
    if (this.#now === null || this.#used >= PER_WINDOW) {
      await this.#now?.context.close();
      const { context, page } = await this.#built.openWindow();
      page.setDefaultTimeout(PATIENCE_MS);
      this.#now = { context, window: new BenchWindow(page, this.#built.home) };
      this.#used = 0;
    }
    this.#used += 1;
    return this.#now.window;
  }

  /** Fewer gestures of a sequence that fail as well, found by leaving out halves, quarters and so on. */
  async smallest(seed: number, failed: Played): Promise<Played> {
    let least = failed;
    let tries = 0;
    for (
      let size = Math.ceil(failed.done.length / 2);
      size >= 1;
      size = size === 1 ? 0 : Math.ceil(size / 2)
    ) {
      for (let at = 0; at < least.done.length && tries < SMALLER.tries; ) {
        const fewer = least.done.filter((_, index) => index < at || index >= at + size);
        tries += 1;
        const played = await this.play(seed, fewer, fewer.length);
        if (played.failures.length > 0) least = played;
        else at += size;
      }
    }
    return least;
  }
}

function listOf({ done }: Played): string {
  return done.map(({ gesture, said }, at) => `  ${at + 1}. ${gesture.name}: ${said}`).join('\n');
}

/** How often each gesture was made, and how often it changed something. */
function tallyOf(all: readonly Played[]): string {
  const tallies = new Map<string, { made: number; changed: number; ms: number }>();
  for (const { gesture, changed, ms } of all.flatMap(({ done }) => done)) {
    const tally = tallies.get(gesture.name) ?? { made: 0, changed: 0, ms: 0 };
    tallies.set(gesture.name, {
      made: tally.made + 1,
      changed: tally.changed + (changed ? 1 : 0),
      ms: tally.ms + ms,
    });
  }
  return [...tallies]
    .map(
      ([name, { made, changed, ms }]) =>
        `  ${name}: ${made}, ${changed} changed, ${(ms / made).toFixed(0)} ms each`,
    )
    .join('\n');
}
