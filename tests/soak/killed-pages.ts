import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { Dice } from '../boards/dice';
import { demoFile } from '../e2e/bench-work';
import { type Edit, goToNames, killPage, lastBefore, makeEdit, takeUp } from '../e2e/killed-page';
import { type BuiltWindow, withBuiltWindow } from './built-window';

/** At most so much of the edits is lost. */
const LOST_MS = 5_000;
/** A page is killed at some moment of so long, once there are edits that it must not lose. */
const MOMENTS_MS = 10_000;
/** Longest rest between two edits: from none, where no copy finds a pause, to one after which each edit is kept. */
const RESTS_MS = [1, 300, 1_500, 3_000] as const;
const PATIENCE_MS = 60_000;

/**
 * Pages that are edited until their process is killed at some moment: what is offered again holds every edit
 * that was older than five seconds then.
 *
 * @param seeds one page each
 * @param tell told how it goes
 */
export async function killPages(
  seeds: readonly number[],
  tell: (words: string) => void,
): Promise<{ tried: number; failures: readonly string[] }> {
  const failures: string[] = [];
  let tried = 0;
  for (const seed of seeds) {
    const wrongs = await withBuiltWindow(
      (home) => {
        const file = join(home, 'study.build.json');
        copyFileSync(demoFile('wired.build.json'), file);
        return [file];
      },
      async (built) => [...(await killOne(built, seed, tell)), ...built.complaints],
    ).catch((thrown: unknown) => [String(thrown)]);
    tried++;
    failures.push(...wrongs.map((wrong) => `seed ${seed}: ${wrong}`));
  }
  return { tried, failures };
}

async function killOne({ openWindow }: BuiltWindow, seed: number, tell: (words: string) => void) {
  const dice = new Dice(seed);
  const longestRestMs = RESTS_MS[dice.below(RESTS_MS.length)] ?? 1;
  const { page } = await openWindow();
  page.setDefaultTimeout(PATIENCE_MS);
  await goToNames(page);
  const edits: Edit[] = [await makeEdit(page, 1)];
  const endMs = Date.now() + LOST_MS + dice.below(MOMENTS_MS);
  while (Date.now() < endMs) {
    await page.waitForTimeout(Math.min(dice.below(longestRestMs), endMs - Date.now()));
    edits.push(await makeEdit(page, edits.length + 1));
  }
  const killedMs = Date.now();
  await killPage(page);

  const owed = lastBefore(edits, killedMs - LOST_MS);
  const again = (await openWindow()).page;
  again.setDefaultTimeout(PATIENCE_MS);
  const found = await takeUp(again, 'study.build.json');
  tell(
    `seed ${seed}: of ${edits.length} edits ${owed} are older than five seconds, ${found} were offered again`,
  );
  if (owed === 0) return ['no edit was older than five seconds: nothing was tried'];
  if (found < owed)
    return [`edit ${owed} was older than five seconds, and what was offered ends with ${found}`];
  return found > edits.length
    ? [`what was offered ends with edit ${found}, and only ${edits.length} were made`]
    : [];
}
