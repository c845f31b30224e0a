import { createHash } from 'node:crypto';
import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { LIMITS } from '../../../boards/document/limits';
import { serialize } from '../../../boards/document/serialize';
import { withBrowser, withHome } from '../../e2e/built-program';
import { boardOf } from '../../size/board-of-pins';
import { watchClock } from '../../size/in-page';
import { type Measure, overTarget, told } from '../../size/measures';
import { load, withWindow } from '../../size/window';
import type { TrustRow } from '../row';

const RUNS = 3;
const MEASURE: Measure = { name: 'longest time without an answer', most: 200, unit: 'ms' };
/** What was begun is over by then, and a gap that it left is seen. */
const SETTLED_MS = 1_000;
/** Far more than a board has, in a file that is not too large. */
const FAR_TOO_MANY = 100_000;

const MOST = `${LIMITS.pins.toLocaleString('en-GB')} pins`;

interface Trial {
  readonly name: string;
  readonly text: () => string;
  /** Comes when the window has done with the file. */
  readonly done: (page: Page) => Promise<unknown>;
}

const TRIALS: readonly Trial[] = [
  {
    name: `a build of ${LIMITS.pins} pins`,
    text: () => `${JSON.stringify(boardOf(LIMITS.pins))}\n`,
    done: (page) => page.waitForFunction(() => document.querySelector('.board-canvas canvas')),
  },
  {
    name: `a build of ${LIMITS.pins + 1} pins`,
    text: () => `${JSON.stringify(boardOf(LIMITS.pins + 1))}\n`,
    done: refusedBy(MOST),
  },
  {
    name: `a build of ${FAR_TOO_MANY} pins`,
    text: () => `${JSON.stringify(boardOf(FAR_TOO_MANY))}\n`,
    done: refusedBy(MOST),
  },
  {
    name: 'a file of 64 MB',
    text: () => `${serialize(boardOf(64))}${' '.repeat(64 * 1024 * 1024)}`,
    done: refusedBy('32 MB'),
  },
];

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R16',
    promise: `A build of ${MOST} opens; one of one pin more, one of 100,000 and a file of 64 MB are refused by the name of the limit; the window answers within ${MEASURE.most} ms all the while, in the best of ${RUNS} runs, and the file stays as it was`,
    target: { count: TRIALS.length * RUNS, what: 'files opened or refused' },
    run: () =>
      withHome((home) =>
        withBrowser(async (browser) => {
          let tried = 0;
          const failures: string[] = [];
          for (const { name, text, done } of TRIALS) {
            const file = join(home, 'much.build.json');
            writeFileSync(file, text());
            const before = factsOf(file);
            const gaps: { readonly gap: number }[] = [];
            for (let run = 0; run < RUNS; run++) {
              gaps.push({
                gap: await withWindow(browser, file, watchClock, async (page) => {
                  await done(page);
                  await page.waitForTimeout(SETTLED_MS);
                  return page.evaluate(() => globalThis.noted.longestGapMs);
                }),
              });
              tried += 1;
            }
            const measures = { gap: { ...MEASURE, name: `${name}: ${MEASURE.name}` } };
            process.stdout.write(`R16, ${load()}\n${told(measures, gaps)}`);
            failures.push(...overTarget(measures, gaps, load()));
            if (factsOf(file) !== before) failures.push(`${name}: the file is not what it was`);
          }
          return { tried, failures };
        }),
      ),
  },
];

function refusedBy(limit: string): Trial['done'] {
  return async (page) => {
    const said = page.getByRole('dialog').or(page.getByRole('alertdialog'));
    await said.filter({ hasText: limit }).waitFor();
  };
}

function factsOf(file: string): string {
  const { size, mtimeMs, ino } = statSync(file);
  return `${size} ${mtimeMs} ${ino} ${createHash('sha256').update(readFileSync(file)).digest('hex')}`;
}
