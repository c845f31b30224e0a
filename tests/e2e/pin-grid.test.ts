import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeEach, expect, it } from 'vitest';
import { demoFile } from './bench-work';
import { tabTo } from './keys';
import { plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

// A header is documented by keys alone, and everything is taken back. Common practice of tables, no source.

const workplace = workplaceFor('each test');
let page: Page;

beforeEach(async () => {
  copyFileSync(demoFile('wired.build.json'), join(workplace.home, 'wired.build.json'));
  page = await workplace.open([join(workplace.home, 'wired.build.json')]);
  await page.keyboard.press('Control+1');
  await page.getByRole('main', { name: 'Document' }).waitFor();
});

const header = () => page.getByRole('grid', { name: /^Header .*, as it lies$/ });
const press = async (...keys: readonly string[]) => {
  for (const key of keys) await page.keyboard.press(key);
};

/** "1 drive LED +, a guess": every pin of the header as a screen reader says it, row by row as drawn. */
async function pinsSaid(): Promise<readonly string[]> {
  const said = await header().getByRole('gridcell').locator('.aside-hidden').allTextContents();
  return said.map((words) => plain(words).replace(/^Pin /, ''));
}

async function chosenPins(): Promise<readonly string[]> {
  const said = await header().locator('[aria-selected="true"] .aside-hidden').allTextContents();
  return said.map((words) => plain(words).replace(/^Pin ([^,]*),.*$/, '$1'));
}

/** Adds a blank header by keys: the dialog, its second tab, print, rows and columns. */
async function addBlank(print: string, rows: number, columns: number): Promise<void> {
  await tabTo(page, page.getByRole('button', { name: 'Add a connector…' }));
  await press('Enter');
  await page.getByRole('dialog').waitFor();
  await tabTo(page, page.getByRole('tab', { name: 'From the library' }));
  await press('ArrowRight');
  for (const [label, text] of [
    ['Print on the board', print],
    ['Rows', rows],
    ['Columns', columns],
  ] as const) {
    await tabTo(page, page.getByRole('dialog').getByRole('textbox', { name: label, exact: true }));
    await press('Control+A');
    await page.keyboard.type(String(text));
  }
  await tabTo(page, page.getByRole('button', { name: 'Add the header' }));
  await press('Enter');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await tabTo(page, header());
}

/** Chooses a signal for what is chosen in the header, and comes back to it. */
async function signal(name: string): Promise<void> {
  await press('Enter');
  const field = page.getByRole('combobox', { name: 'Signal' });
  await expect.poll(() => field.evaluate((element) => element === document.activeElement)).toBe(true);
  await press('Control+A');
  await page.keyboard.type(name);
  await page.getByRole('option', { name, exact: true }).waitFor();
  await press('ArrowDown', 'Enter', 'F2');
  await expect
    .poll(() => header().evaluate((element) => element.contains(document.activeElement)))
    .toBe(true);
}

it('a blank 2 × 9 header is documented, filled and mirrored by keys alone, and all of it taken back and done again', async () => {
  await addBlank('JFP', 2, 9);
  await press('Home');
  expect(await chosenPins()).toEqual(['2']);
  expect((await pinsSaid()).slice(0, 2)).toEqual(['2, unknown, not known', '4, unknown, not known']);

  // Pin 1 lies below pin 2. The grounds of the lower row come from one of them.
  await press('ArrowDown');
  await signal('drive LED +');
  await press('ArrowRight');
  await signal('ground');
  await press('Shift+End');
  expect(await chosenPins()).toEqual(['3', '5', '7', '9', '11', '13', '15', '17']);
  await press('Control+D');
  await press('Home', 'ArrowUp');
  await signal('power LED +');
  await press('ArrowRight', 'Shift+End');
  await signal('reserved');
  const documented = await pinsSaid();
  expect(documented).toEqual([
    '2, power LED +, not said how sure',
    ...[4, 6, 8, 10, 12, 14, 16, 18].map((pin) => `${pin}, reserved, not said how sure`),
    '1, drive LED +, not said how sure',
    ...[3, 5, 7, 9, 11, 13, 15, 17].map((pin) => `${pin}, ground, not said how sure`),
  ]);

  // The manual was drawn from below.
  const toolbar = page.getByRole('toolbar', { name: 'Chosen pins' });
  await tabTo(page, toolbar);
  await press('ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'Enter');
  await expect.poll(async () => (await pinsSaid())[8]).toBe('18, power LED +, not said how sure');
  expect((await pinsSaid())[17]).toBe('17, drive LED +, not said how sure');
  const mirrored = await pinsSaid();

  expect(await stateOf(page)).toBe('7 unsaved changes');
  await press(...new Array<string>(6).fill('Control+Z'));
  await expect.poll(pinsSaid).toEqual(mirrored.map((words) => words.replace(/,.*$/, ', unknown, not known')));
  await press('Control+Z');
  await expect.poll(() => stateOf(page)).toBe('saved in wired.build.json');
  await press(...new Array<string>(7).fill('Control+Y'));
  await page.getByRole('option', { name: /^JFP/ }).click();
  await expect.poll(pinsSaid).toEqual(mirrored);
});

it('pins are copied to another header and cleared', async () => {
  await page.getByRole('option', { name: /^PANEL/ }).click();
  await tabTo(page, header());
  await press('Control+Home', 'Shift+ArrowRight', 'Shift+ArrowDown', 'Control+C');
  expect(await chosenPins()).toEqual(['2', '4', '1', '3']);
  await addBlank('COPY', 2, 5);
  await press('Control+Home', 'ArrowRight', 'Control+V');
  await expect
    .poll(pinsSaid)
    .toEqual([
      '2, unknown, not known',
      '4, power LED +, called FP PWR/SLP, fairly sure',
      '6, power LED −, called FP PWR/SLP, fairly sure',
      '8, unknown, not known',
      '10, unknown, not known',
      '1, unknown, not known',
      '3, drive LED +, called HD_PWR, fairly sure',
      '5, drive LED −, called HAD#, fairly sure',
      '7, unknown, not known',
      '9, unknown, not known',
    ]);
  await press('Control+A', 'Delete');
  await expect
    .poll(async () => (await pinsSaid()).every((pin) => pin.endsWith('unknown, not known')))
    .toBe(true);
});

it('labels are typed where they stand; one twice is answered in words, an emptied one is no position', async () => {
  await addBlank('ODD', 1, 4);
  await press('Control+Home');
  await signal('ground');
  await tabTo(page, page.getByRole('button', { name: /^Names, shape and place/ }));
  await press('Enter');
  await tabTo(page, page.getByRole('button', { name: 'Number it another way…' }));
  await press('Enter');
  await tabTo(page, page.getByRole('checkbox', { name: /^Labels of their own/ }));
  await press('Space');
  const dialog = page.getByRole('dialog');
  await tabTo(page, dialog.getByRole('textbox', { name: 'Label in row 1, column 1' }));
  for (const label of ['A1', 'A1', '', 'B'])
    await press('Control+A', ...(label === '' ? ['Delete'] : [...label]), 'Tab');
  await expect
    .poll(async () => plain(await dialog.getByRole('alert').textContent()))
    .toBe('“A1” stands on two positions. Give one of them another label.');
  await tabTo(page, dialog.getByRole('textbox', { name: 'Label in row 1, column 2' }));
  await press('Control+A', 'A', '2');
  await tabTo(page, page.getByRole('button', { name: 'Number it so' }));
  await press('Enter');
  await expect
    .poll(pinsSaid)
    .toEqual(['A1, ground, not said how sure', 'A2, unknown, not known', 'B, unknown, not known']);
});

it('two sources that disagree are both kept and shown, give a lead a doubt, and change places', async () => {
  const doubt = () => page.getByRole('list', { name: 'Findings', exact: true }).getByRole('listitem');
  const onPower = doubt().filter({ hasText: 'Power switch is on pins of PANEL that are not surely known.' });
  expect(await onPower.count()).toBe(0);
  await page.getByRole('option', { name: /^PANEL/ }).click();
  await tabTo(page, header());
  await press('Control+Home', 'ArrowRight', 'ArrowRight', 'Enter');
  const form = page.getByRole('region', { name: 'Pin 6' });
  await tabTo(page, form.getByRole('button', { name: 'Another source says…' }));
  await press('Enter');
  await tabTo(page, page.getByRole('combobox', { name: 'It says' }));
  await page.keyboard.type('reset');
  await press('ArrowDown', 'Enter');
  await tabTo(page, page.getByRole('button', { name: 'Keep it beside' }));
  await press('Enter');
  await expect
    .poll(async () => (await pinsSaid())[2])
    .toMatch(/^6, power switch, .*sources disagree: printed on the board says reset$/);
  const row = page.getByRole('grid', { name: 'Pins of PANEL' }).getByRole('row').nth(6);
  expect(plain(await row.textContent())).toContain('printed on the board says reset');
  await onPower.getByText('another source says something else of it').waitFor();
  await tabTo(page, form.getByRole('button', { name: 'Believe printed on the board: reset' }));
  await press('Enter');
  await expect.poll(async () => (await pinsSaid())[2]).toMatch(/^6, reset, .*standard says power switch$/);
  await press('Control+Z', 'Control+Z');
  await expect.poll(() => stateOf(page)).toBe('saved in wired.build.json');
});

it('a guess becomes a doubt when a lead sits on it', async () => {
  await page.getByRole('option', { name: /^PANEL/ }).click();
  await tabTo(page, header());
  await press('Control+Home', 'ArrowRight', 'ArrowRight', 'Shift+ArrowRight');
  expect(await chosenPins()).toEqual(['6', '8']);
  const form = page.getByRole('region', { name: '2 pins' });
  await tabTo(page, form.getByRole('button', { name: /Read in$/ }));
  await press('Enter');
  await page.getByRole('option', { name: 'guessed' }).waitFor();
  await press('End', 'Enter');
  await expect
    .poll(async () => (await pinsSaid()).filter((pin) => pin.endsWith('a guess')))
    .toEqual([
      '6, power switch, called PWR_SW+, a guess',
      '8, ground, for power switch, called PWR_SW−, a guess',
    ]);
  const findings = page.getByRole('list', { name: 'Findings', exact: true }).getByRole('listitem');
  const words = 'Power switch is on pins of PANEL that are not surely known.';
  await expect.poll(() => findings.filter({ hasText: words }).count()).toBe(1);
  expect(await stateOf(page)).toBe('1 unsaved change');
});

it('a shape that costs pins is asked about, and sizes beyond any header are answered in words', async () => {
  await page.getByRole('option', { name: /^PANEL/ }).click();
  await tabTo(page, page.getByRole('button', { name: /^Names, shape and place/ }));
  await press('Enter');
  const columns = page.getByRole('textbox', { name: 'Columns' });
  await tabTo(page, columns);
  await press('Control+A', '7', '0', 'Enter');
  await page.getByText('A header has 1 to 64 columns. Type a whole number of them.').waitFor();
  await press('Control+A', '4', 'Enter');
  const question = page.getByRole('alertdialog');
  await expect
    .poll(async () => plain(await question.textContent()))
    .toMatch(/PANEL would lose what is known of pins 9 and 10\..*Undo brings all of it back\./);
  await press('Escape');
  await question.waitFor({ state: 'detached' });
  expect(await stateOf(page)).toBe('saved in wired.build.json');
  await tabTo(page, columns);
  await press('Control+A', '4', 'Enter');
  await question.waitFor();
  await tabTo(page, question.getByRole('button', { name: 'Do it anyway' }));
  await press('Enter');
  await expect.poll(async () => (await pinsSaid()).length).toBe(8);
  expect(await stateOf(page)).toBe('1 unsaved change');
});
