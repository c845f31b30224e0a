import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { BoardSheet } from '../../boards/document/board-sheet';
import { parseDocument } from '../../boards/document/parse';
import { demoFile } from './bench-work';
import { chooseFile } from './files';
import { tabTo } from './keys';
import { openLibrary, sheetsBeside } from './library-hands';
import { leadsIn, plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

const sheets = (...parts: readonly string[]) => sheetsBeside(workplace.home, ...parts);

function boardIn(path: string): BoardSheet {
  const parsed = parseDocument(readFileSync(path, 'utf8'));
  if (!parsed.ok || parsed.value.format !== 'leadwright/board') throw new Error(`${path} is no board sheet`);
  return parsed.value;
}

/** The demo's board as somebody else set it down: pin 1 of the panel measured, pin 3 called otherwise. */
function toldAnew(over: Partial<BoardSheet> = {}): string {
  const board = boardIn(demoFile('bench.board.json'));
  const connectors = board.connectors.map((connector) => {
    if (connector.print !== 'PANEL') return connector;
    const pins = connector.pins.map((pin) => {
      if (pin.pin === '1')
        return { ...pin, signal: 'ground' as const, source: { kind: 'measured' as const } };
      return pin.pin === '3' ? { ...pin, name: 'HDD-' } : pin;
    });
    return { ...connector, pins };
  });
  return JSON.stringify({ ...board, id: 'told-anew', name: 'Told anew', connectors, ...over });
}

async function openWired(): Promise<Page> {
  copyFileSync(demoFile('wired.build.json'), join(workplace.home, 'wired.build.json'));
  return workplace.open([join(workplace.home, 'wired.build.json')]);
}

const titles = async (library: Locator) =>
  (await library
    .getByRole('option')
    .evaluateAll((options) =>
      options.map((option) => option.querySelector('span span')?.textContent ?? ''),
    )) as readonly string[];

it('a board is kept, a new build is begun with it, it is copied, changed, compared, taken over and undone', async () => {
  const page = await openWired();
  let library = await openLibrary(page);
  await library.getByText('Set a board down once, use it again').waitFor();
  await library.getByRole('button', { name: 'Keep this build’s board' }).click();
  await expect.poll(() => titles(library)).toEqual(['Tern B2']);
  expect(boardIn(sheets('tern-b2.board.json'))).toEqual(boardIn(demoFile('bench.board.json')));

  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+W');
  await page.getByRole('button', { name: 'Library of sheets' }).click();
  await library.getByRole('option', { name: /Tern B2/ }).click();
  await library.getByRole('button', { name: 'New build with it' }).click();
  await expect.poll(() => stateOf(page)).toBe('not saved yet');

  library = await openLibrary(page);
  await library.getByRole('option', { name: /Tern B2/ }).click();
  await library.getByRole('button', { name: 'Duplicate' }).click();
  await expect.poll(() => titles(library)).toEqual(['Tern B2', 'Tern B2, copy']);
  const [copy] = readdirSync(sheets()).filter((name) => name.includes('copy'));
  writeFileSync(sheets(copy ?? ''), toldAnew({ id: 'tern-copy', name: 'Tern B2, copy' }));

  await page.keyboard.press('Escape');
  library = await openLibrary(page);
  await library.getByRole('option', { name: /copy/ }).click();
  await library.getByRole('button', { name: 'Compare with this build’s board…' }).click();
  const compare = page.getByRole('dialog', { name: /^Compare/ });
  const row = (name: string) =>
    compare.getByRole('row').filter({ has: page.getByRole('rowheader', { name }) });
  expect(plain(await row('pin 1').textContent())).toMatch(/drive LED \+.*ground.*measured/);
  await expect.poll(async () => compare.getByRole('rowheader').count()).toBe(4);
  await compare.getByRole('checkbox', { name: 'Only differences' }).press('Space');
  await expect.poll(async () => compare.getByRole('rowheader').count()).toBeGreaterThan(100);
  await compare.getByRole('combobox', { name: 'Of pin 3' }).selectOption({ label: 'Take theirs' });
  await compare.getByRole('combobox', { name: 'Of name' }).selectOption({ label: 'Leave as it is' });
  await compare.getByRole('button', { name: 'Take over into this build' }).click();
  await compare.waitFor({ state: 'detached' });
  await page.keyboard.press('Escape');
  await expect.poll(() => stateOf(page)).toBe('1 unsaved change');

  library = await openLibrary(page);
  await library.getByRole('button', { name: 'Keep this build’s board' }).click();
  const question = page.getByRole('alertdialog');
  await question.getByRole('button', { name: 'Replace it' }).click();
  await expect.poll(() => existsSync(sheets('removed', 'tern-b2.board.json'))).toBe(true);
  await expect
    .poll(() => boardIn(sheets('tern-b2.board.json')).connectors.find(({ print }) => print === 'PANEL')?.pins)
    .toEqual(
      expect.arrayContaining([
        expect.objectContaining({
          pin: '1',
          signal: 'drive-led-feed',
          alternatives: [expect.objectContaining({ signal: 'ground', source: { kind: 'measured' } })],
        }),
        expect.objectContaining({ pin: '3', name: 'HDD-' }),
      ]),
    );
  expect(boardIn(sheets('removed', 'tern-b2.board.json'))).toEqual(boardIn(demoFile('bench.board.json')));
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+Z');
  await expect.poll(() => stateOf(page)).toBe('not saved yet');
});

it('taking over from another sheet of the board leaves every plug where it is', async () => {
  const page = await openWired();
  const seated = await leadsIn(page, 'Seated');
  mkdirSync(sheets(), { recursive: true });
  writeFileSync(sheets('anew.board.json'), toldAnew());
  const library = await openLibrary(page);
  await library.getByRole('option', { name: /Told anew/ }).click();
  await library.getByRole('button', { name: 'Compare with this build’s board…' }).click();
  const compare = page.getByRole('dialog', { name: /^Compare/ });
  await compare.getByText('Every plug stays where it is.').waitFor();
  await compare.getByRole('button', { name: 'Take over into this build' }).click();
  await page.keyboard.press('Escape');
  expect(await leadsIn(page, 'Seated')).toEqual(seated);
  await page.getByRole('heading', { name: /^Drive LED is on pins of PANEL/ }).waitFor();
});

it('an imported sheet of an id that is there is kept beside it, in its place, or only compared', async () => {
  const page = await openWired();
  const { id } = boardIn(demoFile('bench.board.json'));
  writeFileSync(join(workplace.home, 'theirs.board.json'), toldAnew({ id }));
  const library = await openLibrary(page);
  await library.getByRole('button', { name: 'Keep this build’s board' }).click();
  await expect.poll(() => titles(library)).toEqual(['Tern B2']);

  const bringIn = async (answer: string) => {
    await library.getByRole('button', { name: 'Import a file…' }).click();
    await chooseFile(page, 'theirs.board.json');
    const question = page.getByRole('alertdialog', { name: /already/ });
    expect(plain(await question.textContent())).toMatch(
      /It is called “Tern B2” and lies in tern-b2\.board\.json/,
    );
    await question.getByRole('button', { name: answer }).click();
  };
  await bringIn('Compare them');
  await page.getByRole('dialog', { name: 'Compare “Told anew” with “Tern B2”' }).waitFor();
  await page.keyboard.press('Escape');
  expect(await titles(library)).toEqual(['Tern B2']);

  await bringIn('Keep both');
  await expect.poll(() => titles(library)).toEqual(['Tern B2', 'Told anew']);
  const ids = ['tern-b2', 'told-anew'].map((name) => boardIn(sheets(`${name}.board.json`)).id);
  expect(new Set(ids).size).toBe(2);

  await bringIn('Replace it');
  await expect.poll(() => boardIn(sheets('tern-b2.board.json')).name).toBe('Told anew');
  expect(boardIn(sheets('removed', 'tern-b2.board.json')).name).toBe('Tern B2');
});

it('a file that is no sheet is listed with its reason, and the others are there all the same', async () => {
  const page = await openWired();
  mkdirSync(sheets(), { recursive: true });
  writeFileSync(sheets('broken.board.json'), '{\n  "format": oops\n}');
  writeFileSync(sheets('anew.board.json'), toldAnew());
  const library = await openLibrary(page);
  await expect.poll(() => titles(library)).toEqual(['Told anew', 'broken.board.json']);
  await library.getByRole('option', { name: /broken/ }).click();
  const details = library.getByRole('region', { name: 'The chosen sheet' });
  await expect
    .poll(async () => plain(await details.textContent()))
    .toMatch(/not JSON from line 2, column 13/);
});

it('sheets are searched by name, print, signal and size', async () => {
  const page = await openWired();
  mkdirSync(sheets(), { recursive: true });
  writeFileSync(sheets('anew.board.json'), toldAnew());
  const bare = { ...boardIn(demoFile('bench.board.json')), id: 'bare', name: 'Bare', connectors: [] };
  const outline = { widthMm: 170, depthMm: 170, formFactor: 'mini-itx' as const };
  writeFileSync(sheets('bare.board.json'), JSON.stringify({ ...bare, outline }));
  const library = await openLibrary(page);
  const found = async (words: string) => {
    await library.getByRole('searchbox').fill(words);
    return titles(library);
  };
  await expect.poll(() => titles(library)).toEqual(['Bare', 'Told anew']);
  expect(await found('anew')).toEqual(['Told anew']);
  expect(await found('panel power switch')).toEqual(['Told anew']);
  expect(await found('mini-itx')).toEqual(['Bare']);
  await found('no such thing');
  await library.getByText('No sheet has these words.').waitFor();
});

it('everything works with no pointer: found, renamed, used in a new build, removed', async () => {
  mkdirSync(sheets(), { recursive: true });
  writeFileSync(sheets('anew.board.json'), toldAnew());
  const page = await workplace.open();
  let library = await openLibrary(page);
  await expect.poll(() => titles(library)).toEqual(['Told anew']);
  await page.keyboard.type('anew');
  await tabTo(page, library.getByRole('listbox', { name: 'Sheets' }));
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Home');
  await tabTo(page, library.getByRole('textbox', { name: 'Name of the sheet' }));
  await page.keyboard.press('Control+A');
  await page.keyboard.type('Told twice');
  await page.keyboard.press('Enter');
  await expect.poll(() => boardIn(sheets('anew.board.json')).name).toBe('Told twice');
  await tabTo(page, library.getByRole('button', { name: 'Close' }));
  await page.keyboard.press('Enter');

  await page.keyboard.press('Control+N');
  await tabTo(page, page.getByRole('button', { name: 'Library…, board sheet' }));
  await page.keyboard.press('Enter');
  const pick = page.getByRole('dialog', { name: 'Choose a board sheet' });
  // The list is read from the disk: an Enter before it is there chooses nothing.
  await pick.getByRole('option').first().waitFor();
  await tabTo(page, pick.getByRole('listbox', { name: 'Sheets' }));
  await page.keyboard.press('Home');
  await page.keyboard.press('Enter');
  await pick.waitFor({ state: 'detached' });
  await tabTo(page, page.getByRole('button', { name: 'Start the build' }));
  await page.keyboard.press('Enter');
  await expect.poll(() => stateOf(page)).toBe('not saved yet');

  library = await openLibrary(page);
  await tabTo(page, library.getByRole('listbox', { name: 'Sheets' }));
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Home');
  await tabTo(page, library.getByRole('button', { name: 'Remove…' }));
  await page.keyboard.press('Enter');
  await page.getByRole('alertdialog').waitFor();
  await page.keyboard.press('Enter');
  await library.getByText('Set a board down once, use it again').waitFor();
  expect(readdirSync(sheets('removed'))).toEqual(['anew.board.json']);
});

it('another folder is chosen, and when it has gone that is said and the usual one is a press away', async () => {
  const page = await openWired();
  const other = join(workplace.home, 'stick');
  mkdirSync(other);
  writeFileSync(join(other, 'anew.board.json'), toldAnew());
  const library = await openLibrary(page);
  await library.getByRole('button', { name: 'Another folder…' }).click();
  const choice = page.getByRole('dialog', { name: 'Choose a folder' });
  await choice.getByRole('option', { name: 'stick' }).click();
  await choice.getByRole('option', { name: 'anew.board.json' }).waitFor();
  await choice.getByRole('button', { name: 'Use this folder' }).click();
  await expect.poll(() => titles(library)).toEqual(['Told anew']);
  await page.keyboard.press('Escape');

  rmSync(other, { recursive: true });
  await openLibrary(page);
  const told = library.getByRole('alert');
  expect(plain(await told.textContent())).toMatch(/“stick” cannot be read.*moved, renamed or deleted.*usual/);
  await library.getByRole('button', { name: 'The usual folder' }).click();
  await library.getByText('Set a board down once, use it again').waitFor();
  expect(existsSync(other)).toBe(false);
});

it('one sheet of the library takes over from another, and the former is among the removed', async () => {
  mkdirSync(sheets(), { recursive: true });
  writeFileSync(sheets('first.board.json'), readFileSync(demoFile('bench.board.json')));
  writeFileSync(sheets('second.board.json'), toldAnew());
  const page = await workplace.open();
  const library = await openLibrary(page);
  await library.getByRole('option', { name: /Tern B2/ }).click();
  await library.getByRole('button', { name: 'Compare with another sheet…' }).click();
  const pick = page.getByRole('dialog', { name: 'Choose a board sheet' });
  await pick.getByRole('option', { name: /Told anew/ }).click();
  await pick.getByRole('button', { name: 'Use this sheet' }).click();
  await page.getByRole('button', { name: 'Take over into “Tern B2”' }).click();
  await expect.poll(() => existsSync(sheets('removed', 'first.board.json'))).toBe(true);
  await page.getByRole('dialog', { name: /^Compare/ }).waitFor({ state: 'detached' });
  const pin = boardIn(sheets('first.board.json'))
    .connectors.find(({ print }) => print === 'PANEL')
    ?.pins.find((each) => each.pin === '1');
  expect(pin).toMatchObject({ signal: 'drive-led-feed', alternatives: [{ signal: 'ground' }] });
  expect(boardIn(sheets('removed', 'first.board.json'))).toEqual(boardIn(demoFile('bench.board.json')));
});
