import { copyFileSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { wired } from '../boards/library/demo-files';
import { demoFile } from './bench-work';
import { takeOff } from './hands';
import { editKept, goToNames, killPage, makeEdit, takeUp } from './killed-page';
import { leadsIn } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

async function workOnDemo(): Promise<Page> {
  copyFileSync(demoFile('wired.build.json'), join(workplace.home, 'study.build.json'));
  const page = await workplace.open([join(workplace.home, 'study.build.json')]);
  await takeOff(page, wired, { lead: 'speaker', plug: 'plug' });
  return page;
}

it.each([
  { manner: 'without a pause', pauseMs: 0 },
  { manner: 'with a rest after each edit', pauseMs: 1_500 },
])('a page that is worked $manner and killed has what its copies held offered again', async ({ pauseMs }) => {
  const page = await workOnDemo();
  await goToNames(page);
  let number = 0;
  await expect
    .poll(async () => {
      number = (await makeEdit(page, number + 1)).number;
      await page.waitForTimeout(pauseMs);
      return editKept(`${workplace.home}-data`);
    })
    .toBeGreaterThanOrEqual(3);
  const kept = editKept(`${workplace.home}-data`);
  await killPage(page);
  const again = await workplace.open();
  const found = await takeUp(again, 'study.build.json');
  expect(await leadsIn(again, 'On the shelf')).toHaveLength(1);
  expect(found).toBeGreaterThanOrEqual(kept);
  expect(found).toBeLessThanOrEqual(number);
});

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
