import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CDPSession, Page } from 'playwright-core';
import { inRoot } from '../../electron/start/place.mjs';
import { Dice } from '../boards/dice';
import { withBuiltWindow } from './built-window';
import { answer } from './gestures/diagnose';
import { AREA_KEYS } from './gestures/gesture';
import { layAll } from './gestures/route';
import { takeOffOrTurn } from './gestures/wire';

/** What the window held at some moment, after everything that nothing needs was given back. */
export interface Sample {
  readonly minute: number;
  readonly heapBytes: number;
  /** Nodes of the page, also those that are taken out of it and still held. */
  readonly nodes: number;
  readonly listeners: number;
  /** The longest round since the sample before: more and more of it would be something that grows. */
  readonly slowestMs: number;
}

export interface Soak {
  /** Rounds of work, each of a few edits that are taken back again. */
  readonly rounds: number;
  readonly samples: readonly Sample[];
  /** Errors, words on the console, what goes against the policy. */
  readonly complaints: readonly string[];
}

const MINUTE_MS = 60_000;
/** As often a sample is taken; at least so many come together in a short run. */
const BETWEEN_SAMPLES = { mostMinutes: 5, least: 8 };

/** A busy machine is waited for: whether the window answers in time is asked elsewhere. */
const PATIENCE_MS = 5 * MINUTE_MS;

/**
 * A robot at work in the window as built, for so many minutes: it goes through the areas, takes plugs off
 * and turns them, answers questions, lays all cables, opens and closes windows, saves, and takes all of it
 * back, again and again. What it does is drawn by chance from a seed.
 *
 * @param told is given each sample as it is taken
 */
export function workFor(minutes: number, seed: number, told: (sample: Sample) => void): Promise<Soak> {
  const everyCable = inRoot('boards', 'library', 'demo', 'every-cable.build.json');
  const bench = (home: string) => {
    const file = join(home, 'bench.build.json');
    copyFileSync(everyCable, file);
    return [file];
  };
  return withBuiltWindow(bench, async ({ complaints, openWindow }) => {
    const { context, page } = await openWindow();
    context.setDefaultTimeout(PATIENCE_MS);
    await page.getByRole('navigation', { name: 'Work areas' }).waitFor();
    const devtools = await context.newCDPSession(page);
    return { ...(await work(page, devtools, minutes, new Dice(seed), told)), complaints };
  });
}

async function work(
  page: Page,
  devtools: CDPSession,
  minutes: number,
  dice: Dice,
  told: (sample: Sample) => void,
) {
  const began = performance.now();
  const passed = () => (performance.now() - began) / MINUTE_MS;
  const between = Math.min(BETWEEN_SAMPLES.mostMinutes, minutes / BETWEEN_SAMPLES.least);
  const samples: Sample[] = [];
  let [rounds, slowestMs] = [0, 0];
  const take = async () => {
    const sample = { ...(await sampleOf(page, devtools, passed())), slowestMs };
    slowestMs = 0;
    samples.push(sample);
    told(sample);
  };
  while (passed() < minutes) {
    const start = performance.now();
    await oneRound(page, dice);
    rounds += 1;
    slowestMs = Math.max(slowestMs, performance.now() - start);
    if (passed() >= samples.length * between) await take();
  }
  await take();
  return { rounds, samples };
}

/** Keys of the areas, and of windows that are opened and closed again. */
const AREAS = Object.values(AREA_KEYS);
const WINDOWS = ['Control+O', 'Control+Shift+S', 'Control+K', 'Control+P'];

/** Some edits, a look round, and everything taken back, so that the document is what it was. */
async function oneRound(page: Page, dice: Dice): Promise<void> {
  await backToWiring(page);
  const edits = 1 + dice.below(5);
  for (let at = 0; at < edits; at++) await oneEdit(page, dice);
  for (let at = 1 + dice.below(3); at > 0; at--) {
    await page.keyboard.press(dice.pick(AREAS) ?? AREA_KEYS.wire);
    await page.waitForTimeout(50);
    if (dice.oneIn(3)) {
      await page.keyboard.press(dice.pick(WINDOWS) ?? 'Control+O');
      await page.waitForTimeout(100);
      await closeAll(page);
    }
  }
  if (dice.oneIn(4)) await page.keyboard.press('Control+S');
  await backToWiring(page);
  for (let at = 0; at < edits + 1; at++) await page.keyboard.press('Control+Z');
  if (dice.oneIn(5)) {
    for (let at = 0; at < edits; at++) await page.keyboard.press('Control+Y');
    for (let at = 0; at < edits; at++) await page.keyboard.press('Control+Z');
  }
}

async function backToWiring(page: Page): Promise<void> {
  await closeAll(page);
  await page.keyboard.press(AREA_KEYS.wire);
}

/** Closes every window; one that opens late is waited for a moment. */
async function closeAll(page: Page): Promise<void> {
  const windows = page.getByRole('dialog').or(page.getByRole('alertdialog'));
  for (let times = 0; times < 5; times++) {
    await page.keyboard.press('Escape');
    await page.waitForTimeout(50);
    if ((await windows.count()) === 0) return;
  }
}

/** A plug taken off or turned, an answer given, or all cables laid anew. */
async function oneEdit(page: Page, dice: Dice): Promise<void> {
  if (dice.oneIn(4)) await answer({ page, dice });
  else if (dice.oneIn(6)) {
    await layAll({ page });
    await page.waitForTimeout(500);
  } else await takeOffOrTurn({ page, dice });
}

/** More steps than a round ever leaves undone. */
const MOST_STEPS = 8;

async function sampleOf(
  page: Page,
  devtools: CDPSession,
  minute: number,
): Promise<Omit<Sample, 'slowestMs'>> {
  // What is held for the sake of the last click or message is let go of first.
  await backToWiring(page);
  for (let at = 0; at < MOST_STEPS; at++) await page.keyboard.press('Control+Z');
  await page.keyboard.press('Escape');
  await page.waitForTimeout(1_500);
  for (let times = 0; times < 3; times++) await devtools.send('HeapProfiler.collectGarbage');
  const { usedSize } = await devtools.send('Runtime.getHeapUsage');
  const { nodes, jsEventListeners } = await devtools.send('Memory.getDOMCounters');
  return { minute, heapBytes: usedSize, nodes, listeners: jsEventListeners };
}

/**
 * The share by which a number has grown from the second quarter of the samples, when all has been warmed up, to
 * the last.
 */
export function growthOf(samples: readonly Sample[], of: (sample: Sample) => number): number {
  const quarter = Math.max(1, Math.floor(samples.length / 4));
  // The least of each: what is in use for a moment is not held.
  const early = Math.min(...samples.slice(quarter, 2 * quarter).map(of));
  const late = Math.min(...samples.slice(-quarter).map(of));
  return late / early - 1;
}
