import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { decodeCopy } from '../../electron/host/recovery-copy';
import { plain } from './reading';

/** An edit as the window showed it to be done: the machine is called after its number. */
export interface Edit {
  readonly number: number;
  readonly doneMs: number;
}

/** Where the machine is renamed: the edit that is quickest made, and read back. */
export async function goToNames(page: Page): Promise<void> {
  await page.keyboard.press('Control+1');
  await page.getByRole('tab', { name: 'Board plan' }).click();
}

/** Renames the machine once more, and says when the window showed it. */
export async function makeEdit(page: Page, number: number): Promise<Edit> {
  const field = page.getByRole('textbox', { name: 'Name of the machine' });
  await field.fill(nameOf(number));
  await field.press('Enter');
  await page.locator('.top-name', { hasText: new RegExp(`^${nameOf(number)}$`) }).waitFor();
  return { number, doneMs: Date.now() };
}

/** The process of the page ends, as when the system takes it down; the program and the browser go on. */
export async function killPage(page: Page): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  void devtools.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.context().close();
}

/** Takes up what is offered of a file after a crash, and says which edit it holds. */
export async function takeUp(page: Page, file: string): Promise<number> {
  await page.getByRole('button', { name: `Take up again: ${file}` }).click();
  await page.getByRole('banner').getByText('recovered, not saved', { exact: true }).waitFor();
  return editIn(plain(await page.locator('.top-name').textContent()));
}

/** The last edit that a name tells of; 0 where it is none of ours. */
function editIn(name: string): number {
  return Number(/^Edit (\d+)$/.exec(name)?.[1] ?? 0);
}

/** The last edit that a copy on the disk holds; 0 where there is none. */
export function editKept(data: string): number {
  const folder = join(data, 'recovery');
  const names = readdirSync(folder).filter((name) => name.endsWith('.copy'));
  const numbers = names.map((name) => {
    const copy = decodeCopy(readFileSync(join(folder, name), 'utf8'));
    return typeof copy === 'string' ? 0 : editIn(JSON.parse(copy.text).name);
  });
  return Math.max(0, ...numbers);
}

/** The last edit of those that were done so long before a moment; 0 where there is none. */
export function lastBefore(edits: readonly Edit[], momentMs: number): number {
  return edits.findLast(({ doneMs }) => doneMs <= momentMs)?.number ?? 0;
}

function nameOf(number: number): string {
  return `Edit ${number}`;
}
