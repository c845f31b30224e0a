import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Build } from '../../boards/document/build';
import type { Pin } from '../../boards/document/connector';
import { serialize } from '../../boards/document/serialize';
import { wired } from '../boards/library/demo-files';
import { tabTo } from './keys';
import { findingsIn, plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

/** The wired demo, of one of whose connectors only these pins are known. */
function onlyKnown(print: string, pins: readonly Pin[]): Build {
  const connectors = wired.board.connectors.map((each) =>
    each.print === print ? { ...each, pins: [...pins] } : each,
  );
  return { ...wired, board: { ...wired.board, connectors } };
}

async function openAt(print: string, build: Build): Promise<Page> {
  const file = join(workplace.home, 'half.build.json');
  writeFileSync(file, serialize(build));
  const page = await workplace.open([file]);
  await page.keyboard.press('Control+1');
  await page.getByRole('option', { name: new RegExp(`^${print}\\b`) }).click();
  return page;
}

/** The drive LED, the power switch and the key: Front Panel I/O Connectivity Design Guide v1.3, Figure 10. */
const HALF_PANEL: readonly Pin[] = [
  { pin: '1', signal: 'drive-led-feed', source: { kind: 'print' } },
  { pin: '3', signal: 'drive-led-sink', source: { kind: 'print' } },
  { pin: '6', signal: 'power-switch-input', source: { kind: 'measured' } },
  { pin: '10', missing: true, source: { kind: 'print' } },
];

const candidates = (page: Page) => page.getByRole('listbox', { name: /^Known layouts/ }).getByRole('option');
const words = async (page: Page) => plain(await page.getByRole('dialog').textContent());

/** "3: agrees, drive LED −": each row of the list, its sign left out. */
async function rowsOf(page: Page): Promise<readonly string[]> {
  const rows = page.getByRole('grid', { name: /pin by pin$/ }).getByRole('row');
  const read = await rows.evaluateAll((all) =>
    all
      .slice(1)
      .map((row) =>
        [...row.querySelectorAll('[role="rowheader"], [role="gridcell"]')].map((cell) => cell.textContent),
      ),
  );
  return read.map((cells) => plain(cells.join(' | ')));
}

/** What the sheet says of a pin: its row on the page of the connector. */
async function pinOnPage(page: Page, print: string, place: number): Promise<string> {
  const row = page
    .getByRole('grid', { name: `Pins of ${print}` })
    .getByRole('row')
    .nth(place);
  return plain(await row.textContent());
}

describe('a half-filled header', () => {
  it('is matched, compared pin by pin, filled with guesses in one step, and doubted where a lead sits on one', async () => {
    const page = await openAt('PANEL', onlyKnown('PANEL', HALF_PANEL));
    await page.getByRole('button', { name: /^Looks like/ }).click();
    await expect.poll(() => candidates(page).count()).toBe(2);
    expect(await words(page)).toContain('Pin 9 tells them apart.');
    expect(plain(await candidates(page).first().textContent())).toMatch(
      /^switches and LEDsas drawn.*4 of 4 known pins agree100 %$/,
    );
    const rows = await rowsOf(page);
    expect(rows).toHaveLength(10);
    expect(rows[0]).toMatch(/^1 \| =agrees \| drive LED \+ \| 1: drive LED \+/);
    expect(rows[1]).toMatch(/^2 \| \+to fill in \| unknown \| 2: power LED \+/);

    await page.getByRole('button', { name: 'Fill 6 pins as guesses' }).click();
    await expect.poll(() => pinOnPage(page, 'PANEL', 2)).toMatch(/^2power LED \+.*guessed.*a guess$/);
    expect(await pinOnPage(page, 'PANEL', 6)).toMatch(/^6power switch.*measured/);
    const doubts = (await findingsIn(page)).filter(({ severity }) => severity === 'Doubt');
    expect(doubts.map(({ title }) => title)).toContain(
      'Power LED is on pins of PANEL that are not surely known.',
    );
    const finding = page.getByRole('list', { name: 'Findings', exact: true }).getByRole('listitem');
    const power = finding.filter({ hasText: 'Power LED is on pins of PANEL' });
    expect(plain(await power.textContent())).toMatch(/Pins? 2 and 4.*guess/);

    await page.keyboard.press('Control+z');
    await expect.poll(() => pinOnPage(page, 'PANEL', 2)).toMatch(/^2unknown/);
    expect(await stateOf(page)).toMatch(/^saved/);
  });

  it('is worked through by keyboard alone', async () => {
    const page = await openAt('PANEL', onlyKnown('PANEL', HALF_PANEL));
    await page.keyboard.press('Control+Shift+K');
    await expect
      .poll(() =>
        candidates(page)
          .first()
          .evaluate((row) => row === document.activeElement),
      )
      .toBe(true);
    await page.keyboard.press('ArrowDown');
    await expect
      .poll(async () => (await rowsOf(page))[8])
      .toMatch(/^9 \| \+to fill in \| unknown \| 9: \+5 V/);
    await tabTo(page, page.getByRole('button', { name: 'Fill 6 pins as guesses' }));
    await page.keyboard.press('Enter');
    await expect.poll(() => pinOnPage(page, 'PANEL', 9)).toMatch(/^9\+5 V.*guessed/);
  });

  it('is left as it was when the window is closed', async () => {
    const page = await openAt('PANEL', onlyKnown('PANEL', HALF_PANEL));
    await page.keyboard.press('Control+Shift+K');
    await page.getByRole('dialog').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    expect(await stateOf(page)).toMatch(/^saved/);
  });

  it('keeps a pin that differs, and notes the other word only when asked', async () => {
    // Two board product guides: USB 2.0 has no pin at 9, ground on 7 and 8. Turned by half here.
    const turned: readonly Pin[] = [
      { pin: '1', signal: 'usb-over-current', source: { kind: 'measured' } },
      { pin: '2', missing: true, source: { kind: 'print' } },
      { pin: '9', signal: 'usb-vbus', source: { kind: 'manual', where: 'page 3' } },
      { pin: '10', signal: 'usb-vbus', source: { kind: 'manual', where: 'page 3' } },
      { pin: '8', signal: 'ground', source: { kind: 'print' } },
    ];
    const page = await openAt('USB_1', onlyKnown('USB_1', turned));
    await page.getByRole('button', { name: /^Looks like/ }).click();
    await candidates(page).filter({ hasText: 'turned by half' }).first().click();
    expect(await words(page)).toContain('Counted otherwise: the places are compared, not the numbers.');
    expect((await rowsOf(page)).filter((row) => row.includes('differs'))).toEqual([
      expect.stringMatching(/^8 \| ≠differs \| ground \| 3: USB D−, port A/),
    ]);
    await page.getByText('Also note what it says of 1 pin that differs').click();
    await page.getByRole('button', { name: 'Fill 5 pins as guesses, note 1 difference' }).click();
    await expect.poll(() => pinOnPage(page, 'USB_1', 8)).toMatch(/^8ground.*printed on the board/);
    await expect.poll(() => pinOnPage(page, 'USB_1', 3)).toMatch(/^3ground.*guessed/);
  });
});

/** Pins as no published header has them. */
const ODD: readonly Pin[] = [
  { pin: '1', signal: 'fan-tach' },
  { pin: '2', signal: 'ps-on' },
  { pin: '4', missing: true },
  { pin: '7', signal: 'usb-d-plus' },
];

describe('a header that another sheet of the person’s own has', () => {
  it('is found there, and filled in from it', async () => {
    const { board } = onlyKnown('COM', [...ODD, { pin: '9', signal: 'case-open-input', name: 'LID' }]);
    const sheet = { ...board, id: 'hall', name: 'Hall board' };
    mkdirSync(`${workplace.home}-data/sheets`, { recursive: true });
    writeFileSync(`${workplace.home}-data/sheets/hall.board.json`, serialize(sheet));
    const page = await openAt('COM', onlyKnown('COM', ODD));
    await page.keyboard.press('Control+Shift+K');
    await expect.poll(() => words(page)).toContain('With 1 board sheet of your own.');
    expect(plain(await candidates(page).first().textContent())).toContain('Hall board');
    await page.getByRole('button', { name: 'Fill 1 pin as a guess' }).click();
    await expect.poll(() => pinOnPage(page, 'COM', 9)).toMatch(/^9case open.*LID.*guessed/);
  });
});

describe('a header that cannot be told', () => {
  it('is answered in words while nothing is known of it', async () => {
    const page = await openAt('COM', onlyKnown('COM', []));
    await page.getByRole('button', { name: /^Looks like/ }).click();
    await page.getByRole('dialog').waitFor();
    expect(await words(page)).toContain('Nothing is known of its pins yet, so every header would match.');
    await page.getByRole('button', { name: 'Close' }).last().click();
    await page.getByRole('dialog').waitFor({ state: 'detached' });
  });

  it('is said to be like nothing known, and nothing can be filled in', async () => {
    const page = await openAt('COM', onlyKnown('COM', ODD));
    await page.getByRole('button', { name: /^Looks like/ }).click();
    await page.getByRole('dialog').waitFor();
    expect(await words(page)).toContain('None is close');
    expect(await page.getByRole('button', { name: /^Fill/ }).count()).toBe(0);
  });
});
