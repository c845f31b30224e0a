import { copyFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { wired } from '../boards/library/demo-files';
import { demoFile } from './bench-work';
import { dropOn } from './files';
import { plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

const NAMES = ['one.build.json', 'two.build.json', 'three.build.json'];

function threeFiles(): readonly string[] {
  const files = NAMES.map((name) => join(workplace.home, name));
  for (const file of files) copyFileSync(demoFile('wired.build.json'), file);
  return files;
}

const announced = (page: Page) => async () =>
  plain(await page.locator('[aria-live="polite"]').first().textContent());

it('of several files named at the start the first is opened, and it is said that the others are not', async () => {
  const page = await workplace.open(threeFiles());
  await expect.poll(() => stateOf(page)).toBe('saved in one.build.json');
  await expect.poll(announced(page)).toContain('of these 3 only the first was taken');
});

it('of several files dropped at once the first is opened, and it is said that the others are not', async () => {
  const files = threeFiles();
  for (const file of files.slice(1)) writeFileSync(file, 'not a build');
  const page = await workplace.open();
  await dropOn(page, files);
  await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toBe(wired.name);
  await expect.poll(announced(page)).toContain('of these 3 only the first was taken');
  expect(await page.getByRole('alertdialog').count()).toBe(0);
});
