import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Build } from '../../boards/document/build';
import { toScreen } from '../../renderer/canvas/view';
import { UNWIRED } from './bench-work';
import { drawingOn } from './hands';
import { plain } from './reading';

const { tray: _, ...bareCase } = UNWIRED.case;

/** A build whose case has no tray yet. */
export const TRAYLESS: Build = { ...UNWIRED, case: bareCase };

/** Where a point of the tray is drawn, seen from the front: pixels of the page. */
async function onMap(page: Page, [xMm, yMm]: At): Promise<{ x: number; y: number }> {
  const { view, left, top } = await drawingOn(page);
  const { x, y } = toScreen(view, { x: xMm, y: yMm });
  return { x: left + x, y: top + y };
}

type At = readonly [xMm: number, yMm: number];

export async function pressOnMap(page: Page, at: At): Promise<void> {
  const { x, y } = await onMap(page, at);
  await page.mouse.click(x, y);
}

/** Drags over the map; Escape on the way takes it back. */
export async function dragOnMap(page: Page, from: At, to: At, drop = true): Promise<void> {
  const [start, end] = [await onMap(page, from), await onMap(page, to)];
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(start.x + 6, start.y + 6, { steps: 2 });
  await page.mouse.move(end.x, end.y, { steps: 4 });
  if (!drop) await page.keyboard.press('Escape');
  await page.mouse.up();
}

export async function takeTool(page: Page, name: string): Promise<void> {
  await page.getByRole('radio', { name }).click();
}

/** What stands at the head of the panel: the name of what is chosen. */
export async function chosenName(page: Page): Promise<string> {
  const panel = page.getByRole('complementary', { name: 'Chosen, and what is known' });
  return plain(await panel.getByRole('heading', { level: 2 }).first().textContent());
}

/** The figures in a field of the panel. */
export async function figuresIn(page: Page, label: string): Promise<number> {
  const text = await page.getByRole('textbox', { name: label, exact: true }).inputValue();
  return Number(text.replace('−', '-'));
}

/** Undoes until the case has no tray; gives how many steps that took. */
export async function undoAll(page: Page): Promise<number> {
  for (let steps = 0; steps < 40; steps++) {
    if (await page.getByRole('heading', { name: 'No tray is drawn yet' }).isVisible()) return steps;
    await page.keyboard.press('Control+z');
    await expect
      .poll(async () => (await page.getByRole('contentinfo').textContent()) ?? '')
      .toMatch(/^Undone/);
  }
  throw new Error('Forty steps do not undo the tray');
}
