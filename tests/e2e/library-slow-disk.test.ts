import { existsSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { beforeEach, expect, it } from 'vitest';
import { layTwoSheets, openLibrary, sheetsBeside } from './library-hands';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

beforeEach(() => layTwoSheets(workplace.home));

const rowOf = (library: Locator, name: string) => library.getByRole('option', { name: new RegExp(name) });

/** The library with both sheets read. */
async function openBoth(page: Page): Promise<Locator> {
  const library = await openLibrary(page);
  await rowOf(library, 'Second').waitFor();
  return library;
}

/** From now on no file is read; returns how to let the disk go on. */
async function holdReading(page: Page): Promise<() => void> {
  let goOn = () => {};
  const released = new Promise<void>((resolve) => {
    goOn = resolve;
  });
  await page.route('**/call/open', async (route) => {
    await released;
    await route.continue();
  });
  return goOn;
}

it('what can be done with a sheet waits until that very sheet has been read', async () => {
  const page = await workplace.open();
  const library = await openBoth(page);
  const remove = library.getByRole('button', { name: 'Remove…' });
  const nameLine = library.getByRole('textbox', { name: 'Name of the sheet' });
  await rowOf(library, 'Tern B2').click();
  await remove.waitFor();
  expect(await nameLine.inputValue()).toBe('Tern B2');

  const goOn = await holdReading(page);
  await rowOf(library, 'Second').click();
  await library
    .getByRole('region', { name: 'The chosen sheet' })
    .getByText('Second', { exact: true })
    .waitFor();
  await expect.poll(() => remove.count()).toBe(0);
  expect([await nameLine.count(), await library.getByRole('button', { name: /^Compare/ }).count()]).toEqual([
    0, 0,
  ]);
  goOn();
  await remove.click();
  const question = page.getByRole('alertdialog', { name: 'Remove “Second” from the library?' });
  await question.getByRole('button', { name: 'Remove' }).click();
  await expect
    .poll(() => existsSync(sheetsBeside(workplace.home, 'removed', 'second.board.json')))
    .toBe(true);
  expect(existsSync(sheetsBeside(workplace.home, 'first.board.json'))).toBe(true);
});

it('a double click begins a build with the sheet it was made on, once that has been read', async () => {
  const page = await workplace.open();
  let library = await openBoth(page);
  await rowOf(library, 'Tern B2').click();
  await library.getByRole('button', { name: 'Remove…' }).waitFor();

  const goOn = await holdReading(page);
  await rowOf(library, 'Second').dblclick();
  goOn();
  await library.waitFor({ state: 'detached' });
  library = await openBoth(page);
  await library.getByRole('button', { name: 'Keep this build’s board' }).click();
  await page.getByText('“Second” is in the library already, word for word.').first().waitFor();
});
