import type { Locator, Page } from 'playwright-core';
import type { Dice } from '../../boards/dice';
import type { AreaKey, Hand, Made } from './gesture';

/** Nothing of these: they ask for files, print, or leave the document. */
const ELSEWHERE = /…|\bPrint\b|\bSave\b|\bOpen\b|\bClose\b|\bStop\b|[Ll]arge letters/;

export async function oneOf(those: Locator, dice: Dice): Promise<Locator | null> {
  const many = await those.count();
  return many === 0 ? null : those.nth(dice.below(many));
}

interface Control {
  readonly it: Locator;
  readonly name: string;
}

/** One of the controls that can be seen and used, and is not about something else. */
async function oneUsable(those: Locator, dice: Dice, but: RegExp): Promise<Control | null> {
  const names = await those.evaluateAll((elements) =>
    elements.map((element) => {
      const off =
        element.matches(':disabled, [aria-disabled="true"]') || element.closest('[inert], [hidden]');
      if (off || !element.checkVisibility()) return null;
      return element.getAttribute('aria-label') ?? element.textContent ?? '';
    }),
  );
  const usable = names.flatMap((name, at) => (name === null || but.test(name) ? [] : [{ name, at }]));
  const one = dice.pick(usable);
  return one === undefined ? null : { it: those.nth(one.at), name: one.name.trim().slice(0, 60) };
}

/** Presses one of the buttons of a part of the window. */
export async function pressOne({ dice }: Hand, part: Locator, but = ELSEWHERE): Promise<Made | undefined> {
  const buttons = part.locator('button:not([aria-haspopup])');
  const one = await oneUsable(buttons, dice, but);
  if (one === null) return undefined;
  await one.it.click();
  return { said: `pressed “${one.name}”` };
}

/** What is typed into lines of figures, and into lines of words: good, bad and odd. */
const FIGURES = ['0', '7', '12.5', '64', '118.5', '2.54', '300', '-3', '1e9', 'abc', '', '½', '3 in'];
const WORDS = [
  'Bench 7',
  'A',
  '',
  ' ',
  'Ünïcode ☃ “x”',
  '<b>bold</b>',
  'a very long name '.repeat(12),
  '−5 V',
];

/** Types into one of the lines of a part of the window. */
export async function fillOne({ page, dice }: Hand, part: Locator): Promise<Made | undefined> {
  const lines = part.locator(
    'input:is([type="text"], :not([type])):not([role="combobox"], [readonly]), textarea',
  );
  const one = await oneUsable(lines, dice, /^$a/);
  if (one === null) return undefined;
  const line = await one.it.evaluate((element) => {
    const field = element as HTMLInputElement | HTMLTextAreaElement;
    const label = field.labels?.[0]?.textContent ?? field.getAttribute('aria-label') ?? '';
    return { label, figures: field.inputMode === 'decimal' || /^[−\d.,]+$/.test(field.value) };
  });
  const typed = dice.pick(line.figures ? FIGURES : WORDS) ?? '';
  await one.it.fill(typed);
  const said = `typed “${typed.slice(0, 24)}” into “${line.label}”`;
  // Whatever comes next has to take it.
  if (dice.oneIn(4)) return { said: `${said}, and left it` };
  await page.keyboard.press(dice.oneIn(3) ? 'Tab' : 'Enter');
  // What was not taken is not left to be typed on.
  if (await one.it.isVisible()) await one.it.press('Escape');
  return { said };
}

/** Chooses from one of the short lists of a part of the window. */
export async function chooseOne({ page, dice }: Hand, part: Locator): Promise<Made | undefined> {
  const one = await oneUsable(part.locator('button[aria-haspopup="listbox"]'), dice, /^$a/);
  if (one === null) return undefined;
  await one.it.click();
  const options = page.locator('.popover [role="option"]');
  await options.first().waitFor();
  const option = await oneUsable(options, dice, /^$a/);
  await option?.it.click();
  return { said: `chose “${option?.name}” in “${one.name}”` };
}

/** Ticks or clears one of the boxes of a part of the window. */
export async function tickOne({ dice }: Hand, part: Locator): Promise<Made | undefined> {
  const boxes = part.getByRole('checkbox').or(part.getByRole('switch'));
  const box = await oneOf(boxes, dice);
  if (box === null) return undefined;
  await box.press('Space');
  return { said: `ticked “${await box.evaluate((element) => element.getAttribute('aria-label') ?? '')}”` };
}

/** Presses keys one after the other, each drawn from a list. */
export async function pressKeys({ page, dice }: Hand, keys: readonly string[], most: number): Promise<Made> {
  const pressed: string[] = [];
  for (let left = 1 + dice.below(most); left > 0; left--) pressed.push(dice.pick(keys) ?? 'Escape');
  for (const key of pressed) await page.keyboard.press(key);
  return { said: `pressed ${pressed.join(' ')}` };
}

/** Does one of several things by their weight, such as nothing that leaves a list of them. */
export async function oneWay(
  hand: Hand,
  ways: readonly (() => Promise<Made | undefined>)[],
): Promise<Made | undefined> {
  return hand.dice.pick(ways)?.();
}

/** An entry of one of the menus, by the words it begins with. */
export async function fromMenu(page: Page, menu: string, entry: RegExp): Promise<Made | undefined> {
  await page.getByRole('button', { name: menu, exact: true }).click();
  const item = page.getByRole('menuitem', { name: entry });
  await item.waitFor();
  if ((await item.getAttribute('aria-disabled')) === 'true') {
    await page.keyboard.press('Escape');
    return undefined;
  }
  const words = (await item.textContent()) ?? '';
  await item.click();
  return { said: `${menu}: ${words}` };
}

/** Whether something lies over the window that keys would go to: a dialog, a menu, a list, a plug in the hand. */
export function isCovered(page: Page): Promise<boolean> {
  return page.evaluate(
    () =>
      document.querySelector(
        '[role="dialog"], [role="alertdialog"], [role="menu"], .popover, [role="application"].hand-bar',
      ) !== null,
  );
}

/** Closes whatever lies over the window. */
export async function clear(page: Page): Promise<void> {
  for (let times = 0; times < 8 && (await isCovered(page)); times++) await page.keyboard.press('Escape');
}

const KEY_MS = 2_000;

/**
 * Presses a key of the window until what it brings about is there: a dialog that was fetched late may have
 * kept it for itself, and is closed.
 */
export async function pressUntil<T>(page: Page, key: string, comes: () => Promise<T>): Promise<T> {
  for (let times = 0; ; times++) {
    await clear(page);
    const coming = comes();
    // What does not come is told by the last press.
    coming.catch(() => undefined);
    await page.keyboard.press(key);
    try {
      return await coming;
    } catch (error) {
      if (times === 4) throw error;
    }
  }
}

/** Goes to a work area, with nothing over it. */
export async function goTo(page: Page, key: AreaKey): Promise<void> {
  const button = page
    .getByRole('navigation', { name: 'Work areas' })
    .getByRole('button')
    .nth(Number(key.at(-1)) - 1);
  const here = button.and(page.locator('[aria-current="page"]'));
  await pressUntil(page, key, () => here.waitFor({ timeout: KEY_MS }));
}
