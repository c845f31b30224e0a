import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { wired } from '../boards/library/demo-files';
import { demoFile } from './bench-work';
import { openDoor, withBrowser, withHome } from './built-program';
import { takeOff } from './hands';
import { stateOf } from './reading';

function fetchedParts(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
}

// Not at a workplace, which holds that nothing stands on the console: a browser notes each request that nobody takes.
it('a window whose program has ended says so at every turn, and keeps the work on the screen', () =>
  withHome((home) =>
    withBrowser(async (browser) => {
      const file = join(home, 'study.build.json');
      copyFileSync(demoFile('wired.build.json'), file);
      const door = await openDoor([file]);
      const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
      await page.goto(door.startUrl());
      await page.getByRole('grid', { name: 'Leads' }).waitFor();
      // What the window shows things with is fetched when it has nothing else to do; these are among the last.
      for (const part of ['browse-dialog', 'hand-over-area', 'seating-panel', 'plan-canvas', 'tray-canvas'])
        await expect.poll(() => fetchedParts(page)).toContainEqual(expect.stringContaining(part));
      door.close();
      await door.ended;

      await takeOff(page, wired, { lead: 'speaker', plug: 'plug' });
      await expect.poll(() => stateOf(page)).toBe('1 unsaved change');
      await page.keyboard.press('Control+S');
      const message = page.getByRole('alertdialog', { name: '“study.build.json” was not saved' });
      await expect.poll(() => message.textContent()).toContain('a recovery copy could not be written either');
      await message.getByRole('button', { name: 'Close' }).last().click();

      await page.keyboard.press('Control+O');
      const strip = page.locator('.strip');
      await expect
        .poll(() => strip.textContent())
        .toContain('The program behind this window does not answer.');
      await page.keyboard.press('Escape');
      const goTo = (area: string) => page.getByRole('button', { name: area, exact: true }).click();
      for (const area of ['Diagnose', 'Hand over', 'Wire', 'Document']) await goTo(area);
      await page.getByRole('tab', { name: 'Board plan' }).click();
      await page.locator('canvas').first().waitFor();
      await goTo('Route');
      await page.locator('canvas').first().waitFor();
      expect(await stateOf(page)).toBe('1 unsaved change');
      expect(await page.getByRole('heading', { name: 'The window cannot go on' }).count()).toBe(0);
    }),
  ));
