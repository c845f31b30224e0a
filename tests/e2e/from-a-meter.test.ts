import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Build } from '../../boards/document/build';
import type { Connector } from '../../boards/document/connector';
import type { PinReading } from '../../boards/document/pin-reading';
import { serialize } from '../../boards/document/serialize';
import { blankHeader } from '../../boards/library/blank-header';
import { identifyPins } from '../../boards/pinout/meter/identify';
import type { SignalId } from '../../boards/signals/signals';
import { wired } from '../boards/library/demo-files';
import { type AnsweringBoard, answeringBoard, proposedIn, questionIn, typedFor } from './answering-board';
import { buildIn } from './bench-work';
import { arrowTo, tabTo } from './keys';
import { plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

/** Front Panel I/O Connectivity Design Guide v1.3 (2005), Figure 10: what the pins of the published header are. */
const TRUTH = new Map<string, SignalId>([
  ['1', 'drive-led-feed'],
  ['2', 'power-led-feed'],
  ['3', 'drive-led-sink'],
  ['4', 'power-led-sink'],
  ['5', 'ground'],
  ['6', 'power-switch-input'],
  ['7', 'reset-switch-input'],
  ['8', 'ground'],
  ['9', 'reserved'],
]);

/** As a person finds it: two rows of five, counted odd and even, nothing known. */
const BLANK: Connector = blankHeader(
  { rows: 2, cols: 5, pitchMm: 2.54, numbering: { scheme: 'zig-zag', from: 'bottom-left' } },
  { id: 'unknown', print: 'JP9', place: { xMm: 20, yMm: 20, turn: 0 } },
);

async function openAt(connector: Connector, before?: (page: Page) => Promise<void>): Promise<Page> {
  const board = { ...wired.board, connectors: [connector] };
  const build: Build = { ...wired, board, seats: [] };
  const file = join(workplace.home, 'bench.build.json');
  writeFileSync(file, serialize(build));
  const page = await workplace.open([file]);
  await page.keyboard.press('Control+1');
  const row = page.getByRole('option', { name: /^JP9\b/ });
  await tabTo(page, page.getByRole('listbox').filter({ has: row }));
  await arrowTo(page, row);
  await page.keyboard.press('Enter');
  await page.getByRole('grid', { name: 'Pins of JP9' }).waitFor();
  await before?.(page);
  await page.keyboard.press('Control+Shift+M');
  await page.getByRole('dialog', { name: 'JP9 from a meter' }).waitFor();
  return page;
}

const KEYED: Connector = { ...BLANK, pins: [{ pin: '10', missing: true }] };
const line = (page: Page) =>
  page.getByRole('region', { name: 'Next reading' }).getByRole('textbox', { name: /^What|^Whether/ });
const readings = (page: Page) =>
  page.getByRole('list', { name: 'Readings', exact: true }).getByRole('listitem');
const layouts = async (page: Page) =>
  plain(await page.getByRole('region', { name: 'Whole layouts' }).textContent());
const hasFocus = (page: Page) => line(page).evaluate((element) => element === document.activeElement);

async function note(page: Page, typed: string): Promise<void> {
  const before = await readings(page).count();
  await page.keyboard.type(typed);
  await page.keyboard.press('Enter');
  await expect.poll(() => readings(page).count()).toBe(before + 1);
}

/** Readings that a fixed order takes: ohms at every pin, then volts in standby, then running, until one layout has 95 %. */
function readingsInFixedOrder(board: AnsweringBoard): number {
  const pins = [...TRUTH.keys()];
  const order = [
    ...pins.map((pin) => ({ kind: 'ohms', pin }) as const),
    ...pins.map((pin) => ({ kind: 'volts', pin, supply: 'standby' }) as const),
    ...pins.map((pin) => ({ kind: 'volts', pin, supply: 'running' }) as const),
  ];
  const noted: PinReading[] = [];
  for (const question of order) {
    noted.push(board.answer(question));
    const found = identifyPins({ ...KEYED, readings: [...noted] });
    if (found.ok && found.value.verdict === 'identified') return noted.length;
  }
  throw new Error('The fixed order does not end');
}

describe('the published panel header, from meter readings alone', () => {
  it('is documented by keyboard in fewer readings than a fixed order takes, saved and read back', async () => {
    const board = answeringBoard(TRUTH);
    const page = await openAt(BLANK);
    await proposedIn(page);
    await tabTo(page, page.getByRole('button', { name: 'Mark missing posts' }));
    await page.keyboard.press('Space');
    await page.keyboard.press('Tab');
    const key = page.getByRole('dialog').getByRole('gridcell', { name: /^Pin 10\b/ });
    await page.keyboard.press('ArrowUp');
    for (let presses = 0; presses < 10; presses++) {
      if (await key.evaluate((cell) => cell === document.activeElement)) break;
      await page.keyboard.press('ArrowRight');
    }
    await page.keyboard.press('Space');
    await expect.poll(async () => plain(await key.textContent())).toMatch(/^Pin 10, no pin here/);
    await tabTo(page, line(page));

    let taken = 0;
    while (!/One layout has/.test(await layouts(page))) {
      expect(taken).toBeLessThan(20);
      const question = questionIn(await proposedIn(page));
      await note(page, typedFor(board.answer(question)));
      taken += 1;
      await proposedIn(page);
      expect(await hasFocus(page)).toBe(true);
    }
    const inOrder = readingsInFixedOrder(board);
    process.stdout.write(`from a meter: ${taken} readings as proposed, ${inOrder} in a fixed order\n`);
    expect(taken).toBeLessThanOrEqual(5);
    expect(taken).toBeLessThanOrEqual(0.6 * inOrder);

    await tabTo(page, page.getByRole('button', { name: 'Fill 9 pins' }));
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await page.keyboard.press('Control+S');
    await expect.poll(() => stateOf(page)).toBe('saved in bench.build.json');

    const [saved] = buildIn(join(workplace.home, 'bench.build.json')).board.connectors;
    const told = saved?.pins.filter(({ missing }) => !missing) ?? [];
    expect(new Map(told.map(({ pin, signal }) => [pin, signal]))).toEqual(TRUTH);
    for (const { source, confidence } of told) {
      expect(source?.kind).toBe('measured');
      expect(plain(source?.where ?? '')).toBe(`meter, ${taken} readings`);
      expect(confidence).toBeGreaterThanOrEqual(0.9);
    }
    expect(saved?.readings).toHaveLength(taken);
  }, 180_000);
});

describe('a run of readings', () => {
  it('names two that cannot both be true, and goes on when one is removed', async () => {
    const page = await openAt(KEYED);
    await proposedIn(page);
    const own = page.getByRole('button', { name: /^Another reading/ });
    await own.click();
    const form = page.getByRole('dialog').locator('.meter-own');
    const measured = async (what: string, pin: string, typed: string) => {
      await form.getByRole('button', { name: /What was measured$/ }).click();
      await page.getByRole('option', { name: what }).click();
      await form.getByRole('button', { name: /\bAt$/ }).click();
      await page.getByRole('option', { name: `pin\u00a0${pin}`, exact: true }).click();
      await form.getByRole('textbox', { name: /^What the meter shows/ }).fill(typed);
      await page.keyboard.press('Enter');
    };
    await measured('ohms to ground, unplugged', '5', '0.2');
    await expect.poll(() => readings(page).count()).toBe(1);
    await measured('volts while it runs', '5', '12');
    await expect.poll(() => readings(page).count()).toBe(2);
    const told = page.getByRole('list', { name: 'Readings that contradict each other' });
    await expect
      .poll(async () => plain(await told.textContent()))
      .toBe(
        'These cannot all be true: Resistance from pin 5 to ground: 0.2 Ω; Voltage at pin 5, running: 12 V. Measure them again.',
      );
    await page.getByRole('button', { name: 'Drop reading 2' }).click();
    await told.waitFor({ state: 'detached' });
    expect(await readings(page).count()).toBe(1);
  });

  it('takes back the last reading by the keys of undo, asks another when one is skipped, and says what it cannot read', async () => {
    const page = await openAt(KEYED);
    const first = await proposedIn(page);
    await page.keyboard.type('a lot');
    await page.keyboard.press('Enter');
    await page
      .getByText('This is no number of ohms. Type one such as 470 or 4.7k, or OL for open.')
      .waitFor();
    await page.keyboard.press('Escape');
    await note(page, 'OL');
    expect(await proposedIn(page)).not.toBe(first);
    await page.keyboard.press('Control+z');
    await expect.poll(() => readings(page).count()).toBe(0);
    await expect.poll(() => proposedIn(page)).toBe(first);

    await tabTo(page, page.getByRole('button', { name: 'Skip this one' }));
    await page.keyboard.press('Enter');
    await page.getByText('1 reading skipped.').waitFor();
    expect(await proposedIn(page)).not.toBe(first);
    expect(await hasFocus(page)).toBe(true);
    await page.getByRole('button', { name: 'Ask them again' }).click();
    await expect.poll(() => proposedIn(page)).toBe(first);
  });

  it('can be stopped while it is worked out, and taken up again', async () => {
    const page = await openAt(KEYED, async (opened) => {
      await opened.route(/meter-worker/, async (route) => {
        await new Promise((done) => setTimeout(done, 4_000));
        await route.continue();
      });
    });
    await page.getByRole('button', { name: 'Cancel' }).click();
    await page.getByText('Stopped.').waitFor();
    await page.getByRole('button', { name: 'Work it out' }).click();
    expect(questionIn(await proposedIn(page)).kind).toBe('ohms');
  });

  it('warns of a touch where a pin may be a supply, and never proposes one', async () => {
    const page = await openAt(KEYED);
    expect(questionIn(await proposedIn(page)).kind).toBe('ohms');
    await page.getByRole('button', { name: /^Another reading/ }).click();
    await page.getByRole('button', { name: /What was measured$/ }).click();
    await page.getByRole('option', { name: 'a brief touch in standby' }).click();
    await expect
      .poll(async () => plain(await page.getByRole('alert').textContent()))
      .toMatch(/Do not join these: pin \d may be a supply/);
  });
});
