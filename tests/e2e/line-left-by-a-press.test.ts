import { copyFileSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { demoFile } from './bench-work';
import { layTwoSheets, openLibrary, sheetsBeside } from './library-hands';
import { stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

async function inDocument(): Promise<Page> {
  copyFileSync(demoFile('wired.build.json'), join(workplace.home, 'wired.build.json'));
  const page = await workplace.open([join(workplace.home, 'wired.build.json')]);
  await page.keyboard.press('Control+1');
  await page.getByRole('main', { name: 'Document' }).waitFor();
  return page;
}

it('a name that is typed is taken when another lead is chosen, and is the name of its own', async () => {
  const page = await inDocument();
  const name = page.getByRole('textbox', { name: 'Name of the lead' });
  const lead = (title: string) => page.getByRole('option', { name: new RegExp(`^${title}`) });
  await page.getByRole('tab', { name: 'Case' }).click();
  await lead('Speaker').click();
  await name.fill('Buzzer');
  await lead('Reset switch').click();
  await lead('Buzzer').waitFor();
  await expect.poll(() => name.inputValue()).toBe('Reset switch');
  expect(await stateOf(page)).toBe('1 unsaved change');
});

it('a name that is typed for a pin is taken when another pin is chosen', async () => {
  const page = await inDocument();
  await page.getByRole('tab', { name: 'Board', exact: true }).click();
  await page.getByRole('option', { name: /^PANEL/ }).click();
  const rows = page.getByRole('grid', { name: 'Pins of PANEL' }).getByRole('row');
  await rows.nth(1).click();
  await page.getByRole('textbox', { name: 'Name in the manual' }).fill('HD-LED');
  await rows.nth(2).click();
  await expect.poll(() => rows.nth(1).textContent()).toContain('HD-LED');
  expect(await rows.nth(2).textContent()).not.toContain('HD-LED');
});

it('a sheet of the library is renamed by choosing another, which is shown then', async () => {
  layTwoSheets(workplace.home);
  const page = await workplace.open();
  const library = await openLibrary(page);
  const name = library.getByRole('textbox', { name: 'Name of the sheet' });
  await library.getByRole('option', { name: /^Tern B2/ }).click();
  await name.fill('First');
  await library.getByRole('option', { name: /^Second/ }).click();
  await library.getByRole('option', { name: /^First/ }).waitFor();
  await expect.poll(() => name.inputValue()).toBe('Second');
  const nameIn = (file: string): unknown =>
    JSON.parse(readFileSync(sheetsBeside(workplace.home, file), 'utf8')).name;
  expect([nameIn('first.board.json'), nameIn('second.board.json')]).toEqual(['First', 'Second']);
});
