import { copyFileSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { wired } from '../boards/library/demo-files';
import { demoFile } from './bench-work';
import { takeOff } from './hands';
import { stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

/** `npm run soak` asks for more. */
const CRASHES = Number(process.env.LEADWRIGHT_CRASHES ?? 2);

async function workOnDemo(): Promise<Page> {
  copyFileSync(demoFile('wired.build.json'), join(workplace.home, 'study.build.json'));
  const page = await workplace.open([join(workplace.home, 'study.build.json')]);
  await takeOff(page, wired, { lead: 'speaker', plug: 'plug' });
  return page;
}

const kept = () => {
  const folder = join(`${workplace.home}-data`, 'recovery');
  return readdirSync(folder).filter((name) => name.endsWith('.copy'));
};

it.each(Array.from({ length: CRASHES }, (_, at) => at + 1))(
  'a page whose process is killed has its work offered again, crash %d',
  async () => {
    const page = await workOnDemo();
    // The promise: at most five seconds of edits are lost.
    await page.waitForTimeout(5_000);
    expect(kept()).not.toEqual([]);
    const devtools = await page.context().newCDPSession(page);
    const crashed = page.waitForEvent('crash');
    void devtools.send('Page.crash').catch(() => undefined);
    await crashed;
    await page.context().close();

    const again = await workplace.open();
    await again.getByRole('button', { name: 'Take up again: study.build.json' }).click();
    await expect.poll(() => stateOf(again)).toBe('recovered, not saved');
  },
);

it('a failure of the window is said plainly, keeps the work and leaves a report that names nothing of it', async () => {
  const page = await workOnDemo();
  // As the browser tells of an error that nobody caught; a real one would count as a complaint of the test.
  await page.evaluate(() => {
    const error = new TypeError('There is no lead Study machine 3');
    window.dispatchEvent(new ErrorEvent('error', { error }));
  });
  await page.getByRole('heading', { name: 'The window cannot go on' }).waitFor();
  const report = page.getByRole('region', { name: 'A report, for you to share or not' });
  const shown = (await report.locator('pre').textContent()) ?? '';
  expect(shown).toContain('Failure: TypeError');
  expect(shown).not.toContain('Study');
  const folder = join(`${workplace.home}-data`, 'reports');
  expect(readdirSync(folder).map((name) => readFileSync(join(folder, name), 'utf8'))).toEqual([shown]);
  if (process.env.SHOT) await page.screenshot({ path: process.env.SHOT });
  await page.getByRole('button', { name: 'Load again' }).click();
  await page.getByRole('button', { name: 'Take up again: study.build.json' }).waitFor();
});
