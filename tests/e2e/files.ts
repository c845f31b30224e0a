import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { stateOf } from './reading';

/** Saves under a name in the home folder, by the window's own dialog. */
export async function saveAs(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+Shift+S');
  const dialog = page.getByRole('dialog', { name: 'Save as' });
  await dialog.getByRole('textbox', { name: 'Name of the file' }).fill(name);
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  await expect.poll(() => stateOf(page)).toBe(`saved in ${name}`);
}

/** Chooses a file of the home folder in the window's own dialog, which has been opened. */
export async function chooseFile(page: Page, name: string): Promise<void> {
  await page.getByRole('dialog', { name: 'Open' }).getByRole('option', { name }).click();
}

/** File, Open, and a file of the home folder. */
export async function openFile(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+O');
  await chooseFile(page, name);
}

/** Drops files or folders from the system's file manager on the middle of the window. */
export async function dropOn(page: Page, paths: readonly string[]): Promise<void> {
  const { width, height } = page.viewportSize() ?? { width: 0, height: 0 };
  const devtools = await page.context().newCDPSession(page);
  for (const type of ['dragEnter', 'dragOver', 'drop'] as const) {
    await devtools.send('Input.dispatchDragEvent', {
      type,
      x: width / 2,
      y: height / 2,
      data: { items: [], files: [...paths], dragOperationsMask: 1 },
    });
  }
  await devtools.detach();
}
