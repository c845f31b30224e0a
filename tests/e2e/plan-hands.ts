import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { toScreen } from '../../renderer/canvas/view';
import { drawingOn } from './hands';
import { plain } from './reading';

/** Where pin 1 of the chosen connector stands, as the line below the plan has it: millimetres from the corner. */
export async function placeShown(page: Page): Promise<readonly [xMm: number, yMm: number]> {
  const read = async (label: string) =>
    Number(
      (await page.getByRole('textbox', { name: label }).inputValue()).replace('−', '-').replace(',', ''),
    );
  return [await read('Pin 1 from the left, mm'), await read('Pin 1 from the top, mm')];
}

/** The chosen connector, as the line below the plan names it, and how it is turned. */
export async function chosenShown(page: Page): Promise<readonly string[]> {
  const words = await page
    .getByRole('region', { name: /^Place of / })
    .getByRole('paragraph')
    .allTextContents();
  return words.map(plain);
}

/** A point of the board in pixels of the page. */
export async function boardPoint(page: Page, xMm: number, yMm: number): Promise<{ x: number; y: number }> {
  const { view, left, top } = await drawingOn(page);
  const { x, y } = toScreen(view, { x: xMm, y: yMm });
  return { x: left + x, y: top + y };
}

/** Takes the chosen connector by its first pin and lets it go elsewhere; Escape on the way takes it back. */
export async function dragChosen(page: Page, toMm: readonly [number, number], drop = true): Promise<void> {
  const [xMm, yMm] = await placeShown(page);
  const from = await boardPoint(page, xMm, yMm);
  const to = await boardPoint(page, ...toMm);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 10, from.y + 10, { steps: 2 });
  await page.mouse.move(to.x, to.y, { steps: 4 });
  if (!drop) await page.keyboard.press('Escape');
  await page.mouse.up();
}

/** Chooses one of a short list by its button, by pointer. */
export async function choose(page: Page, label: string, option: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`${label}$`) }).click();
  await page.getByRole('option', { name: option, exact: true }).click();
}

/** What stands in the way of anything on the plan, sentence by sentence. */
export async function remarksIn(page: Page): Promise<readonly string[]> {
  const said = page.getByRole('region', { name: 'Look again' });
  return (await said.getByRole('listitem').allTextContents()).map(plain);
}

/** A length typed into a line, and Enter. */
export async function typeLength(page: Page, label: string, typed: string): Promise<void> {
  await page.getByRole('textbox', { name: label }).fill(typed);
  await page.keyboard.press('Enter');
}

/** The last thing that was told in the strip. */
export async function toldInStrip(page: Page): Promise<string> {
  const [told] = await page.getByRole('contentinfo').getByRole('paragraph').allTextContents();
  expect(told).toBeDefined();
  return plain(told ?? '');
}
