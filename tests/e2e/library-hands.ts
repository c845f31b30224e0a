import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { demoFile } from './bench-work';

/** A file of the library's folder, where no other was chosen, or that folder. */
export function sheetsBeside(home: string, ...parts: readonly string[]): string {
  return join(`${home}-data`, 'sheets', ...parts);
}

/** Two boards in the library: the demo's, and one that says the same under another name. */
export function layTwoSheets(home: string): void {
  mkdirSync(sheetsBeside(home), { recursive: true });
  const text = readFileSync(demoFile('bench.board.json'), 'utf8');
  writeFileSync(sheetsBeside(home, 'first.board.json'), text);
  const second = { ...Object(JSON.parse(text)), id: 'second', name: 'Second' };
  writeFileSync(sheetsBeside(home, 'second.board.json'), JSON.stringify(second));
}

/** The library, opened by its key. */
export async function openLibrary(page: Page): Promise<Locator> {
  await page.keyboard.press('Control+Shift+O');
  const library = page.getByRole('dialog', { name: 'Library of sheets' });
  await library.waitFor();
  return library;
}
