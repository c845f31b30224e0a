import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import type { Grid } from '../../boards/document/grid';
import { serialize } from '../../boards/document/serialize';
import type { Pixels } from '../../boards/pinout/photo/straighten';
import { bench, posts } from '../boards/fixtures/bench';
import { pngOf } from '../boards/pinout/photo/picture-files';
import { plain } from './reading';
import type { Workplace } from './workplace';

export const GRID: Grid = {
  rows: 2,
  cols: 5,
  pitchMm: 2.54,
  numbering: { scheme: 'zig-zag', from: 'top-left' },
};

/** Decoding and straightening wait for their turn on a busy machine. */
export const SLOW = { timeout: 15_000 };

/** Opens a build with one bare header, at its window for a photo; a picture lies beside it as header.png. */
export async function openAtPhoto(workplace: Workplace, picture: Pixels): Promise<Page> {
  const file = join(workplace.home, 'bare.build.json');
  writeFileSync(file, serialize(bench([posts('panel', GRID, { title: 'front panel' })], [])));
  writeFileSync(join(workplace.home, 'header.png'), pngOf(picture));
  const page = await workplace.open([file]);
  await openPhotoWindow(page);
  return page;
}

export async function openPhotoWindow(page: Page): Promise<void> {
  await page.keyboard.press('Control+1');
  await page.getByRole('tab', { name: 'Board', exact: true }).click();
  await page.getByRole('option', { name: /^PANEL/ }).click();
  await page.getByRole('button', { name: 'From a photo…' }).click();
  await photoWindow(page).waitFor();
}

export function photoWindow(page: Page): Locator {
  return page.getByRole('dialog', { name: 'PANEL from a photo' });
}

/** The photo that is worked on. */
export function stageIn(page: Page): Locator {
  return photoWindow(page).getByRole('application');
}

/** What the window says of the photo, or of a file that is none. */
export async function photoStatus(page: Page): Promise<string> {
  return plain(await photoWindow(page).getByRole('status').first().textContent());
}

/** Chooses a picture by the browser's own dialog. */
export async function choosePhoto(page: Page, path: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await photoWindow(page).getByRole('button', { name: 'Choose a photo…' }).click();
  await (await chooser).setFiles(path);
}
