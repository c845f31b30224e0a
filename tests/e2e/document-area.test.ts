import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, beforeEach, expect, it } from 'vitest';
import { buildIn, demoFile } from './bench-work';
import { plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('all tests');
const SAVED = 'saved in wired.build.json';
let page: Page;

beforeAll(async () => {
  copyFileSync(demoFile('wired.build.json'), join(workplace.home, 'wired.build.json'));
  page = await workplace.open([join(workplace.home, 'wired.build.json')]);
  await page.keyboard.press('Control+1');
  await page.getByRole('main', { name: 'Document' }).waitFor();
});
beforeEach(async () => {
  expect(await stateOf(page)).toBe(SAVED);
});

it('the signal of a pin is changed, undone and done again', async () => {
  await page.getByRole('tab', { name: 'Board', exact: true }).click();
  await page.getByRole('option', { name: /^PANEL/ }).click();
  const row = page.getByRole('grid', { name: 'Pins of PANEL' }).getByRole('row').nth(9);
  const signal = async () => plain(await row.getByRole('rowheader').textContent());
  expect(await signal()).toMatch(/^reserved/);
  await row.click();
  const field = page.getByRole('combobox', { name: 'Signal' });
  await field.fill('not conn');
  await page.getByRole('option', { name: /^not connected/ }).click();
  await expect.poll(signal).toMatch(/^not connected/);
  await throughUndoAndRedo(signal);
});

it('a connector is added from the library, undone and done again', async () => {
  await page.getByRole('tab', { name: 'Board', exact: true }).click();
  const listed = () =>
    page.getByRole('listbox', { name: 'Connectors of the board' }).getByRole('option').count();
  const before = await listed();
  await page.getByRole('button', { name: 'Add a connector…' }).click();
  await page.getByRole('searchbox').fill('speaker');
  await page.getByRole('dialog').getByRole('option').first().click();
  await expect.poll(listed).toBe(before + 1);
  await throughUndoAndRedo(listed);
});

it('a lead is renamed, and its findings with it, undone and done again', async () => {
  await page.getByRole('tab', { name: 'Case' }).click();
  await page.getByRole('option', { name: /^Speaker/ }).click();
  await page.getByRole('textbox', { name: 'Name of the lead' }).fill('Buzzer');
  await page.keyboard.press('Enter');
  const shown = async () => [
    await page.getByRole('main').getByRole('heading', { level: 2 }).textContent(),
    await page.getByRole('heading', { level: 3 }).first().textContent(),
  ];
  await expect.poll(shown).toEqual(['Buzzer', expect.stringMatching(/^Buzzer is on pins of SPKR/)]);
  await throughUndoAndRedo(shown);
});

it('what was typed into one line is one step', async () => {
  await page.getByRole('button', { name: 'Names and notes' }).click();
  const field = page.getByRole('textbox', { name: 'Name of the machine' });
  const heading = () => page.getByRole('heading', { level: 1 }).textContent();
  await field.fill('');
  await field.pressSequentially('Study machine 12');
  await page.keyboard.press('Tab');
  await expect.poll(heading).toBe('Study machine 12');
  await throughUndoAndRedo(heading);
});

it('what is being typed is in the file that is saved by keys, and goes along to another area', async () => {
  const name = page.getByRole('textbox', { name: 'Name of the machine' });
  const heading = () => page.getByRole('heading', { level: 1 }).textContent();
  const before = await name.inputValue();
  await name.fill('Typed and saved');
  await page.keyboard.press('Control+S');
  await expect.poll(heading).toBe('Typed and saved');
  await expect.poll(() => stateOf(page)).toBe(SAVED);
  expect(buildIn(join(workplace.home, 'wired.build.json')).name).toBe('Typed and saved');
  // The line is typed on where it was left.
  await page.keyboard.press('End');
  await page.keyboard.type(', twice');
  await page.keyboard.press('Control+2');
  await expect.poll(heading).toBe('Typed and saved, twice');
  await page.keyboard.press('Control+Z');
  await page.keyboard.press('Control+Z');
  await expect.poll(heading).toBe(before);
  await page.keyboard.press('Control+S');
  await expect.poll(() => stateOf(page)).toBe(SAVED);
  await page.keyboard.press('Control+1');
});

/** One step back shows the file as it was saved, one forward what was just done, and one back again. */
async function throughUndoAndRedo<T>(shown: () => Promise<T>): Promise<void> {
  const done = await shown();
  expect(await stateOf(page)).toBe('1 unsaved change');
  await fromEditMenu(/^Undo /);
  await expect.poll(() => stateOf(page)).toBe(SAVED);
  expect(await shown()).not.toEqual(done);
  await fromEditMenu(/^Redo /);
  await expect.poll(() => stateOf(page)).toBe('1 unsaved change');
  expect(await shown()).toEqual(done);
  await fromEditMenu(/^Undo /);
  await expect.poll(() => stateOf(page)).toBe(SAVED);
}

async function fromEditMenu(name: RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Edit', exact: true }).click();
  await page.getByRole('menuitem', { name }).click();
}
