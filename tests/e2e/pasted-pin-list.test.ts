import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Connector } from '../../boards/document/connector';
import { buildIn, demoFile } from './bench-work';
import { saveAs } from './files';
import { arrowTo, tabTo } from './keys';
import { plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');
const WITH_CLIPBOARD = { permissions: ['clipboard-read', 'clipboard-write'] };

/** As the manual of some board may print it: odd pins on the left, even ones on the right. */
const FROM_A_MANUAL = `Front panel header
Pin  Signal        Pin  Signal
1    HDD_LED+      2    PWR_LED+
3    HDD_LED-      4    PWR_LED-
5    GND           6    PWRBTN#
7    RST_BTN#      8    GND
9    +5V           10   KEY (no pin)`;

/** The same pins as the published panel: Front Panel I/O Connectivity Design Guide v1.3, 2.2.2 and Figure 10. */
const PANEL = [
  ['1', 'drive-led-feed'],
  ['2', 'power-led-feed'],
  ['3', 'drive-led-sink'],
  ['4', 'power-led-sink'],
  ['5', 'ground'],
  ['6', 'power-switch-input'],
  ['7', 'reset-switch-input'],
  ['8', 'ground'],
  ['9', 'supply-5v'],
  ['10', 'no pin'],
];

const meant = ({ pins }: Pick<Connector, 'pins'>) =>
  pins.map(({ pin, missing, signal }) => [pin, missing ? 'no pin' : signal]);

const dialogOn = (page: Page) => page.getByRole('dialog', { name: /^Paste a pin list/ });
const listField = (page: Page) => page.getByRole('textbox', { name: 'The list, as it was copied' });
const wordsIn = async (place: Locator) => plain(await place.textContent());

/** The text is in the system's clipboard, as it is when somebody has copied it elsewhere. */
async function copied(page: Page, text: string): Promise<void> {
  await page.evaluate((given) => navigator.clipboard.writeText(given), text);
}

/** The demo's build, as a file of one's own. */
function ownCopy(): string {
  const file = join(workplace.home, 'wired.build.json');
  copyFileSync(demoFile('wired.build.json'), file);
  return file;
}

/** The demo's board, in Document, with one of its connectors chosen. */
async function openAt(print: string): Promise<Page> {
  const page = await workplace.open([ownCopy()], WITH_CLIPBOARD);
  await page.keyboard.press('Control+1');
  await page.getByRole('option', { name: new RegExp(`^${print}\\b`) }).click();
  return page;
}

/** Opens the way of filling and writes a list into it, without filling anything yet. */
async function given(page: Page, text: string): Promise<Locator> {
  await page.getByRole('button', { name: /^Paste a pin list/ }).click();
  await listField(page).fill(text);
  return dialogOn(page);
}

describe('a list from a manual', () => {
  it('documents the panel of a new board in eight actions, is undone in one step, and is on the disk as meant', async () => {
    const page = await workplace.open([], WITH_CLIPBOARD);
    await copied(page, FROM_A_MANUAL);
    let actions = 0;
    const act = async (doing: Promise<void>) => {
      actions += 1;
      await doing;
    };
    await act(page.keyboard.press('Control+N'));
    await act(page.getByRole('button', { name: 'Start the build' }).click());
    await act(page.getByRole('button', { name: 'Add a connector…' }).click());
    await act(page.getByRole('tab', { name: 'Blank header' }).click());
    await act(page.getByRole('button', { name: 'Add the header' }).click());
    await act(page.getByRole('button', { name: /^Paste a pin list/ }).click());
    await listField(page).waitFor();
    await act(page.keyboard.press('Control+V'));
    await expect.poll(() => wordsIn(dialogOn(page))).toContain('All 10 words were understood.');
    await act(page.keyboard.press('Control+Enter'));
    await dialogOn(page).waitFor({ state: 'detached' });
    expect(actions).toBeLessThan(10);

    await saveAs(page, 'panel.build.json');
    const file = join(workplace.home, 'panel.build.json');
    const [header] = buildIn(file).board.connectors;
    expect(header && meant(header)).toEqual(PANEL);
    expect(header?.pins.every(({ source }) => source?.kind === 'manual')).toBe(true);
    expect(header?.pins.map(({ belongsTo }) => belongsTo).filter(Boolean)).toEqual([
      'reset-switch',
      'power-switch',
    ]);

    await page.keyboard.press('Control+Z');
    await expect.poll(() => stateOf(page)).toBe('1 unsaved change');
    await page.keyboard.press('Control+S');
    await expect.poll(() => stateOf(page)).toBe('saved in panel.build.json');
    expect(buildIn(file).board.connectors[0]?.pins).toEqual([]);
    await page.keyboard.press('Control+Y');
    await page.keyboard.press('Control+S');
    await expect.poll(() => buildIn(file).board.connectors.map(meant)).toEqual([PANEL]);
  });

  it('is pasted, corrected and filled in by keyboard alone', async () => {
    const page = await workplace.open([ownCopy()], WITH_CLIPBOARD);
    await copied(page, FROM_A_MANUAL.replace('+5V', 'FROB'));
    await page.keyboard.press('Control+1');
    await tabTo(page, page.getByRole('listbox', { name: 'Connectors of the board' }));
    await arrowTo(page, page.getByRole('option', { name: /^PANEL\b/ }));
    await page.keyboard.press('Enter');
    await page.keyboard.press('Control+Shift+L');
    await listField(page).waitFor();
    await page.keyboard.press('Control+V');
    await expect.poll(() => wordsIn(dialogOn(page))).toContain('9 of 10 words were understood');
    // Closed by a slip, the list is there again.
    await page.keyboard.press('Escape');
    await dialogOn(page).waitFor({ state: 'detached' });
    await page.keyboard.press('Control+Shift+L');
    await listField(page).waitFor();
    await expect.poll(() => wordsIn(dialogOn(page))).toContain('9 of 10 words were understood');
    await tabTo(page, page.getByRole('textbox', { name: /^Where/ }));
    await page.keyboard.type('manual of the board, page 12');
    await tabTo(page, page.getByRole('combobox', { name: 'Signal of pin 9' }));
    await page.keyboard.press('Control+A');
    await page.keyboard.type('clear sett');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(() => wordsIn(dialogOn(page))).toContain('All 10 words were understood.');
    await page.keyboard.press('Control+Enter');
    await dialogOn(page).waitFor({ state: 'detached' });
    await saveAs(page, 'by-keys.build.json');
    const panel = buildIn(join(workplace.home, 'by-keys.build.json')).board.connectors.find(
      ({ print }) => print === 'PANEL',
    );
    const nine = panel?.pins.find(({ pin }) => pin === '9');
    expect(nine).toMatchObject({
      signal: 'clear-settings',
      name: 'FROB',
      source: { kind: 'manual', where: 'manual of the board, page 12' },
    });
    // What the sheet said before is kept beside it.
    expect(nine?.alternatives?.map(({ signal }) => signal)).toContain('reserved');
  });

  it('shows what it makes of every word, in a sign, a word and a colour', async () => {
    const page = await openAt('PANEL');
    const dialog = await given(page, '1 HDD LED+\n3 HDD LED\n5 KEYLOKC\n7 FROB\n9 LAN LED');
    const row = (pin: string) => dialog.getByRole('row', { name: new RegExp(`^${pin} `) });
    await expect.poll(() => wordsIn(row('1'))).toMatch(/drive LED \+known word$/);
    expect(await wordsIn(row('3'))).toMatch(/a guess$/);
    expect(await wordsIn(row('5'))).toMatch(/a guess$/);
    expect(await wordsIn(row('7'))).toMatch(/not understood$/);
    expect(await wordsIn(row('9'))).toMatch(/known word, no signal for it$/);
    const look = (pin: string) =>
      row(pin)
        .locator('.read-how')
        .evaluate((how) => [how.querySelector('svg')?.innerHTML, getComputedStyle(how).color]);
    const [well, guess, not] = [await look('1'), await look('3'), await look('7')];
    expect(new Set([well[0], guess[0], not[0]]).size).toBe(3);
    expect(new Set([well[1], guess[1], not[1]]).size).toBe(3);
  });
});

describe('a list that cannot be right', () => {
  it('is answered in words, and nothing is filled in', async () => {
    const page = await openAt('PANEL');
    const dialog = await given(page, 'Dear customer,\nthank you');
    const fill = dialog.getByRole('button', { name: /^Fill / });
    const answered = async (text: string, words: string) => {
      await copied(page, text);
      await listField(page).focus();
      await page.keyboard.press('Control+A');
      await page.keyboard.press(text === '' ? 'Delete' : 'Control+V');
      await expect.poll(() => wordsIn(dialog)).toContain(words);
      expect(await fill.isDisabled(), words).toBe(true);
      await page.keyboard.press('Control+Enter');
      expect(await dialog.isVisible()).toBe(true);
    };
    await answered('Dear customer,\nthank you', 'No pin was found in “Dear customer,”.');
    await answered('', 'There is no list yet.');
    await answered('A1 PLED+\nA2 PLED-', 'The connector has no pins A1 and A2.');
    await answered(
      Array.from({ length: 10_000 }, (_, at) => `${at + 1} GND`).join('\n'),
      'The text has 10,000 lines',
    );
    await answered('1 GND '.repeat(170_000), 'The text has 1,020,000 characters');
    await page.keyboard.press('Escape');
    expect(await stateOf(page)).toBe('saved in wired.build.json');
  });

  it('with a pin twice and pins too many says so on top; the connector is made larger where that is wanted', async () => {
    const page = await openAt('PANEL');
    const dialog = await given(page, `${FROM_A_MANUAL}\n9 RSVD\n11 SPKR\n12 +5V`);
    await expect
      .poll(() => wordsIn(dialog))
      .toContain('The list has pins 11 and 12, and the connector has 10 positions without them.');
    expect(await wordsIn(dialog)).toContain(
      'Pin 9 stands in lines 7 and 8 with different words: “+5V” and “RSVD”.',
    );
    expect(await dialog.getByRole('button', { name: 'Fill 10 pins' }).isEnabled()).toBe(true);
    await dialog.getByRole('button', { name: 'Make the connector 2 × 6' }).click();
    await dialog.getByRole('button', { name: 'Fill 12 pins' }).click();
    await saveAs(page, 'larger.build.json');
    const panel = buildIn(join(workplace.home, 'larger.build.json')).board.connectors.find(
      ({ print }) => print === 'PANEL',
    );
    expect(panel?.grid.cols).toBe(6);
    expect(panel && meant(panel).slice(10)).toEqual([
      ['11', 'speaker-drive'],
      ['12', 'speaker-feed'],
    ]);
    expect(panel?.pins[8]?.alternatives).toContainEqual({
      signal: 'reserved',
      name: 'RSVD',
      source: { kind: 'manual' },
    });
  });
});
