import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { serialize } from '../../boards/document/serialize';
import type { Tray } from '../../boards/document/tray';
import { buildIn } from './bench-work';
import { saveAs } from './files';
import { tabTo } from './keys';
import { toldInStrip, typeLength } from './plan-hands';
import { stateOf } from './reading';
import { chosenName, dragOnMap, figuresIn, pressOnMap, TRAYLESS, takeTool, undoAll } from './tray-hands';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

async function traylessBench(): Promise<Page> {
  const file = join(workplace.home, 'bench.build.json');
  writeFileSync(file, serialize(TRAYLESS));
  const page = await workplace.open([file]);
  await page.keyboard.press('Control+3');
  await page.getByRole('button', { name: 'Draw the tray' }).waitFor();
  return page;
}

function map(page: Page) {
  return page.getByRole('application', { name: /^Map of the tray/ });
}

async function mapIsThere(page: Page): Promise<void> {
  await map(page).getByRole('img').waitFor();
  await expect.poll(() => page.evaluate(() => window.Konva?.stages.length)).toBe(1);
}

/** The tray that a saved file holds. */
function trayIn(name: string): Tray {
  const { tray } = buildIn(join(workplace.home, name)).case;
  if (tray === undefined) throw new Error(`The case in ${name} has no tray`);
  return tray;
}

/** A pixel of the map is a little less than a millimetre. */
function near(mm: number) {
  return expect.closeTo(mm, -0.4);
}

describe('a small tray', () => {
  it('is drawn by mouse, undone step by step, done again, saved and read back', async () => {
    const page = await traylessBench();
    await page.getByRole('button', { name: 'Draw the tray' }).click();
    await mapIsThere(page);

    await takeTool(page, 'Add an opening');
    await dragOnMap(page, [290, 100], [320, 160]);
    await expect.poll(() => chosenName(page)).toBe('opening 1');
    await takeTool(page, 'Add a tie point');
    await pressOnMap(page, [350, 220]);
    await expect.poll(() => chosenName(page)).toBe('tie point 1');
    await takeTool(page, 'Add a bay');
    await pressOnMap(page, [320, 350]);
    await expect.poll(() => chosenName(page)).toBe('bay 1');
    await takeTool(page, 'Draw a path');
    await dragOnMap(page, [350, 220], [305, 130]);
    await expect.poll(() => chosenName(page)).toBe('tie point 1 to opening 1');
    // √(45² + 90²) = 100.6 mm as the crow flies.
    expect(await figuresIn(page, 'Length, mm')).toBeGreaterThan(94);
    await typeLength(page, 'Length, mm', '118');

    await page.keyboard.press('Escape');
    await takeTool(page, 'Choose and move');
    await dragOnMap(page, [350, 220], [360, 250]);
    await expect.poll(() => figuresIn(page, 'Middle from the top, mm')).toEqual(near(250));
    await dragOnMap(page, [360, 250], [200, 400], false);
    await expect.poll(() => figuresIn(page, 'Middle from the top, mm')).toEqual(near(250));
    await pressOnMap(page, [305, 130]);
    await expect.poll(() => chosenName(page)).toBe('opening 1');
    const bottom = (await figuresIn(page, 'Edge from the top, mm')) + (await figuresIn(page, 'Height, mm'));
    await dragOnMap(page, [305, bottom], [305, bottom + 20]);
    await expect.poll(() => figuresIn(page, 'Height, mm')).toEqual(near(80));

    // From the back left is right: what is 290 mm from the left is dragged to the left, and its place grows.
    const before = await figuresIn(page, 'Edge from the left, mm');
    await page.getByRole('radio', { name: 'Back' }).click();
    await dragOnMap(page, [420 - 305, 140], [420 - 325, 140]);
    await expect.poll(() => figuresIn(page, 'Edge from the left, mm')).toEqual(near(before + 20));

    const steps = await undoAll(page);
    expect(steps).toBe(9);
    for (let step = 0; step < steps; step++) await page.keyboard.press('Control+y');
    await saveAs(page, 'drawn.build.json');
    const tray = trayIn('drawn.build.json');
    expect(tray.openings).toMatchObject([{ xMm: near(310), heightMm: near(80), edge: 'grommet' }]);
    expect(tray.points).toMatchObject([{ kind: 'tie', xMm: near(360), yMm: near(250) }]);
    expect(tray.bays).toMatchObject([{ widthMm: 147, heightMm: 26 }]);
    expect(tray.paths).toMatchObject([{ lengthMm: 118, from: 'tie', to: 'opening' }]);
    expect(tray.standoffs?.length).toBeGreaterThan(5);
    expect(tray.board).toEqual({ xMm: 14, yMm: 40, rear: 'left' });
  });

  it('is drawn by keyboard alone, undone step by step, done again, saved and read back', async () => {
    const page = await traylessBench();
    await tabTo(page, page.getByRole('button', { name: 'Draw the tray' }));
    await page.keyboard.press('Enter');
    await mapIsThere(page);
    await tabTo(page, map(page));

    // An opening begins in the middle of the tray, 40 mm by 24 mm.
    await page.keyboard.press('o');
    for (const key of ['Shift+ArrowRight', 'Shift+ArrowRight', 'ArrowDown', 'Alt+ArrowRight', 'Enter'])
      await page.keyboard.press(key);
    await expect.poll(() => chosenName(page)).toBe('opening 1');
    expect(await figuresIn(page, 'Edge from the left, mm')).toBe(420 / 2 - 20 + 20);
    expect(await figuresIn(page, 'Width, mm')).toBe(41);
    await page.keyboard.press('e');
    await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('Escape');
    await page.keyboard.press('t');
    await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(() => chosenName(page)).toBe('tie point 1');
    await page.keyboard.press('p');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect.poll(() => chosenName(page)).toBe('tie point 1 to opening 1');
    await expect.poll(() => toldInStrip(page)).toContain('Measure it');
    // Enter with nothing to put down leads to the fields, Escape back to the map.
    await page.keyboard.press('Enter');
    await expect
      .poll(() =>
        page
          .getByRole('textbox', { name: 'Length, mm', exact: true })
          .evaluate((field) => field === document.activeElement),
      )
      .toBe(true);
    await page.keyboard.press('Control+a');
    await page.keyboard.type('64.5');
    await page.keyboard.press('Enter');
    await expect.poll(() => toldInStrip(page)).toMatch(/^Done: Change the length/);
    await page.keyboard.press('Escape');
    await expect.poll(() => map(page).evaluate((pane) => pane === document.activeElement)).toBe(true);

    const steps = await undoAll(page);
    expect(steps).toBe(5);
    for (let step = 0; step < steps; step++) await page.keyboard.press('Control+y');
    await mapIsThere(page);
    await page.keyboard.press('Control+s');
    await expect.poll(() => stateOf(page)).toBe('saved in bench.build.json');
    const tray = trayIn('bench.build.json');
    expect(tray.openings).toMatchObject([{ widthMm: 41, heightMm: 24 }]);
    expect(tray.points).toMatchObject([{ kind: 'tie' }]);
    expect(tray.paths).toMatchObject([{ from: 'tie', to: 'opening', lengthMm: 64.5, side: 'front' }]);
  });
});

it('the shelf is the map in words: what is chosen on it is chosen on the map, and the other way round', async () => {
  const page = await workplace.open();
  await page.getByRole('button', { name: /demo/i }).first().click();
  await page.getByRole('navigation', { name: 'Work areas' }).getByRole('button', { name: 'Route' }).click();
  await mapIsThere(page);
  await page.getByRole('tab', { name: 'Places' }).click();
  await page.getByRole('option', { name: /^Drive cage/ }).click();
  await expect.poll(() => chosenName(page)).toBe('Drive cage');
  // In the middle of the upper bay of the cage.
  await pressOnMap(page, [350, 343]);
  await expect.poll(() => chosenName(page)).toBe('Cage, upper');
  const row = page.getByRole('option', { name: /^Cage, upper/ });
  expect(await row.getAttribute('aria-selected')).toBe('true');
  await page.keyboard.press('m');
  await expect.poll(() => page.getByRole('radio', { name: 'Back' }).isChecked()).toBe(true);
});

it('bad lengths are told in words, and the tray stays as it was', async () => {
  const page = await traylessBench();
  await page.getByRole('button', { name: 'Draw the tray' }).click();
  await mapIsThere(page);
  for (const [typed, told] of [
    ['0', /A size is more than 0/],
    ['-5', /A size is more than 0/],
    ['1e9', /This is no length/],
  ] as const) {
    await typeLength(page, 'Width, mm', typed);
    await page.getByText(told).waitFor();
    await page.keyboard.press('Escape');
    expect(await figuresIn(page, 'Width, mm')).toBe(420);
  }
  expect(await stateOf(page)).toBe('1 unsaved change');
});
