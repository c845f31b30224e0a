import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { serialize } from '../../boards/document/serialize';
import { formFactorOutline } from '../../boards/library/form-factors';
import { buildIn, UNWIRED } from './bench-work';
import { saveAs } from './files';
import { arrowTo, tabTo } from './keys';
import {
  boardPoint,
  choose,
  chosenShown,
  dragChosen,
  placeShown,
  remarksIn,
  toldInStrip,
  typeLength,
} from './plan-hands';
import { stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

/** Searched for in the library, one after another. */
const ADDED = ['speaker', 'fan, four pins', 'case open'];

async function newBoard(page: Page): Promise<void> {
  await page.keyboard.press('Control+N');
  await page.getByRole('button', { name: 'Start the build' }).click();
  await page.getByRole('application', { name: /^Board plan/ }).waitFor();
}

async function toPlan(page: Page): Promise<void> {
  await page.getByRole('tab', { name: 'Board plan' }).click();
  await page.getByRole('application', { name: /^Board plan/ }).waitFor();
  await expect.poll(() => page.evaluate(() => window.Konva?.stages.length)).toBe(1);
}

/** Within a drag's grain: a pixel of the plan is about half a millimetre. */
function near(mm: number) {
  return expect.closeTo(mm, 0);
}

describe('a board of a published size', () => {
  it('gets three connectors, one turned and one dragged, is undone, saved and read back', async () => {
    const page = await workplace.open();
    await newBoard(page);
    await choose(page, 'Form factor', 'Mini-ITX');
    for (const words of ADDED) {
      await page.getByRole('button', { name: 'Add a connector…' }).click();
      await page.getByRole('searchbox').fill(words);
      await page.getByRole('dialog').getByRole('option').first().click();
    }
    await toPlan(page);
    expect(await remarksIn(page)).toEqual([]);

    // The last one is still chosen.
    await dragChosen(page, [83, 61]);
    await expect.poll(() => placeShown(page)).toEqual([near(83), near(61)]);
    const dragged = await placeShown(page);
    for (const mm of dragged) expect(Math.round(mm * 100) / 100).toBe(mm);
    await page.getByRole('button', { name: /^Turn case/i }).click();
    await expect.poll(async () => (await chosenShown(page))[1]).toBe('turned a quarter to the right');
    const turned = await placeShown(page);

    await dragChosen(page, [30, 120], false);
    expect(await placeShown(page)).toEqual(turned);
    await dragChosen(page, [30, 120]);
    await expect.poll(() => placeShown(page)).toEqual([near(30), near(120)]);
    await page.keyboard.press('Control+Z');
    await expect.poll(() => placeShown(page)).toEqual(turned);

    await saveAs(page, 'own.build.json');
    const { board } = buildIn(join(workplace.home, 'own.build.json'));
    expect(board.outline).toEqual(formFactorOutline('mini-itx', 'top'));
    expect(board.connectors).toHaveLength(3);
    expect(board.connectors[2]?.place).toEqual({ xMm: turned[0], yMm: turned[1], turn: 90 });
  });

  it('is set down by keys alone', async () => {
    const page = await workplace.open();
    await page.keyboard.press('Control+N');
    await tabTo(page, page.getByRole('button', { name: 'Start the build' }));
    await page.keyboard.press('Enter');
    for (const words of ADDED) {
      await tabTo(page, page.getByRole('button', { name: 'Add a connector…' }));
      await page.keyboard.press('Enter');
      await page.getByRole('searchbox').waitFor();
      await page.keyboard.type(words);
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('Enter');
      await page.getByRole('dialog').waitFor({ state: 'hidden' });
    }
    await tabTo(page, page.getByRole('tab', { name: 'Connector', exact: true }));
    await page.keyboard.press('ArrowLeft');
    await tabTo(page, page.getByRole('button', { name: /Form factor$/ }));
    await page.keyboard.press('Enter');
    await arrowTo(page, page.getByRole('option', { name: 'free size' }));
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    const plan = page.getByRole('application', { name: /^Board plan/ });
    await tabTo(page, plan);

    // The last is chosen from before; back to the one before it.
    await page.keyboard.press('Shift+Tab');
    const [xMm, yMm] = await placeShown(page);
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Alt+ArrowDown');
    await expect
      .poll(() => placeShown(page))
      .toEqual([expect.closeTo(xMm + 5, 6), expect.closeTo(yMm + 0.6, 6)]);
    await page.keyboard.press('r');
    await expect.poll(async () => (await chosenShown(page))[1]).toBe('turned a quarter to the right');
    const turned = await placeShown(page);
    await page.keyboard.press('Control+d');
    await expect.poll(() => toldInStrip(page)).toMatch(/^Add /);
    await page.keyboard.press('Delete');
    await expect.poll(() => toldInStrip(page)).toMatch(/^Done: Remove /);
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');

    await page.keyboard.press('Control+s');
    await tabTo(page, page.getByRole('textbox', { name: 'Name of the file' }));
    await page.keyboard.press('Control+A');
    await page.keyboard.type('keys.build.json');
    await tabTo(page, page.getByRole('button', { name: 'Save', exact: true }));
    await page.keyboard.press('Enter');
    await expect.poll(() => stateOf(page)).toBe('saved in keys.build.json');
    const { board } = buildIn(join(workplace.home, 'keys.build.json'));
    expect(board.outline).toEqual(formFactorOutline('micro-atx', 'top'));
    expect(board.connectors).toHaveLength(3);
    expect(board.connectors[1]?.place).toEqual({ xMm: turned[0], yMm: turned[1], turn: 90 });
  });
});

it('the way to the names below the plan scrolls the page alone, and not the window', async () => {
  const page = await workplace.open();
  await newBoard(page);
  await choose(page, 'Form factor', 'ATX');
  await page.getByRole('button', { name: 'Names and notes' }).click();
  const field = page.getByRole('textbox', { name: 'Name of the machine' });
  await expect.poll(async () => (await field.boundingBox())?.y ?? 9_999).toBeLessThan(700);
  expect((await page.getByRole('banner').boundingBox())?.y).toBe(0);
});

describe('bad input on the plan', () => {
  it('no size, a hole and a connector off the board, and a 65th hole are told in words; nothing is lost', async () => {
    const holes = Array.from({ length: 64 }, (_, at) => ({ id: `h-${at}`, xMm: 3 * at + 10, yMm: 100 }));
    const build = { ...UNWIRED, board: { ...UNWIRED.board, outline: { widthMm: 244, depthMm: 244, holes } } };
    const file = join(workplace.home, 'full.build.json');
    writeFileSync(file, serialize(build));
    const page = await workplace.open([file]);
    await page.keyboard.press('Control+1');
    await toPlan(page);

    const width = page.getByRole('textbox', { name: 'Width, mm', exact: true });
    for (const [typed, told] of [
      ['0', /A size is more than 0/],
      ['-5', /A size is more than 0/],
      ['wide', /This is no length/],
    ] as const) {
      await typeLength(page, 'Width, mm', typed);
      await page.getByText(told).waitFor();
      await page.keyboard.press('Escape');
      expect(await width.inputValue()).toBe('244');
    }
    expect(await stateOf(page)).toBe('saved in full.build.json');

    await page.getByRole('button', { name: 'Add a hole' }).click();
    await expect
      .poll(() => toldInStrip(page))
      .toBe('A board can hold no more than 64 mounting holes. Remove one first.');

    await typeLength(page, 'Hole number 1 from the left, mm', '−40');
    await expect
      .poll(() => remarksIn(page))
      .toContainEqual(expect.stringMatching(/^Mounting hole number 1 is/));
    await page.keyboard.press('Control+Z');
    await page.keyboard.press('Escape');

    const at = build.board.connectors.find(({ id }) => id === 'fan-rear' || id === 'rear-fan');
    const place = at?.place ?? { xMm: 52, yMm: 60 };
    await page.getByRole('application', { name: /^Board plan/ }).scrollIntoViewIfNeeded();
    const spot = await boardPoint(page, place.xMm, place.yMm);
    await page.mouse.click(spot.x, spot.y);
    await dragChosen(page, [-60, 60]);
    await expect.poll(() => toldInStrip(page)).toContain('lies outside the board. Drag it onto the board');
    expect(await remarksIn(page)).toContainEqual(expect.stringMatching(/lies outside the board/));
  });
});
