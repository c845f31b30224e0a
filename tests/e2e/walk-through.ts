import type { Locator, Page } from 'playwright-core';

/** How many rows of a list are looked into. */
const ROWS = 4;
/** What is shown by then is looked at; what comes later is seen at the next look. */
const DRAWN_MS = 120;

/** It opens no dialog, and has an end-to-end test of its own. */
const IN_ITS_PANE = 'Plan the best seating…';

/** Is given where one is, in words. */
type Look = (where: string) => Promise<void>;

/**
 * Goes through the window as it stands: every area, every tab of it, the first rows of its lists, and every dialog
 * that an area or a menu opens. Whatever is shown is handed to `look`, and dialogs are left by Escape.
 *
 * @returns the dialogs that were open
 */
export async function walkThrough(page: Page, look: Look): Promise<readonly string[]> {
  const dialogs = new Set<string>();
  const dialog = page.locator('[role="dialog"], [role="alertdialog"]').last();
  /** Opens a dialog that has not been open yet, looks into it, and leaves it. */
  const into = async (what: string, open: () => Promise<void>) => {
    if (dialogs.has(what)) return;
    dialogs.add(what);
    await open();
    await dialog.waitFor().catch((thrown) => {
      throw new Error(`${what} opens no dialog`, { cause: thrown });
    });
    await page.waitForTimeout(DRAWN_MS);
    await look(`the dialog of ${what}`);
    for (let left = 0; (await dialog.count()) > 0; left++) {
      if (left === 10) throw new Error(`The dialog of ${what} does not close`);
      await page.keyboard.press('Escape');
      await page.waitForTimeout(DRAWN_MS);
    }
  };
  const areas = page.getByRole('navigation', { name: 'Work areas' }).getByRole('button');
  await areas.first().waitFor();
  for (const area of await areas.all()) {
    await area.click();
    const name = (await area.textContent()) ?? '';
    await page.waitForTimeout(DRAWN_MS);
    await look(name);
    for (const tab of [null, ...(await page.getByRole('tab').all())]) {
      await tab?.click();
      await throughRows(page, look, `${name}, ${(await tab?.textContent()) ?? 'as it is'}`);
      // Their names end in three points; the one of the places of a plug does not.
      for (const button of await page
        .locator('button:enabled')
        .filter({ hasText: /…$|^Places$/, hasNotText: IN_ITS_PANE })
        .all())
        if (await button.isVisible()) await into(await said(button), () => button.click());
    }
  }
  await throughMenus(page, into);
  await into('two sheets side by side', async () => {
    await page.keyboard.press('Control+Shift+O');
    await page.getByRole('button', { name: 'Keep this build’s board' }).click();
    await page.getByRole('button', { name: 'Compare with this build’s board…' }).click();
    await page.getByRole('dialog', { name: /^Compare/ }).waitFor();
  });
  return [...dialogs];
}

async function said(button: Locator): Promise<string> {
  return (await button.textContent()) ?? '';
}

/** The first rows of every list that is shown, opened where they have more below them. */
async function throughRows(page: Page, look: Look, where: string): Promise<void> {
  await page.waitForTimeout(DRAWN_MS);
  await look(where);
  const rows = page.locator('[role="row"], [role="option"]');
  for (let at = 0; at < Math.min(ROWS, await rows.count()); at++) {
    const row = rows.nth(at);
    if (!(await row.isVisible())) continue;
    await row.click();
    if ((await row.getAttribute('aria-expanded')) === 'false') await page.keyboard.press('ArrowRight');
    await page.waitForTimeout(DRAWN_MS);
    await look(`${where}, row ${at + 1}`);
  }
}

/** Every entry of every menu that opens a dialog, which its three points say. */
async function throughMenus(
  page: Page,
  into: (what: string, open: () => Promise<void>) => Promise<void>,
): Promise<void> {
  const shown = page.getByRole('menu');
  const entries = shown.getByRole('menuitem').filter({ hasText: '…' });
  for (const menu of ['File', 'Edit', 'View', 'Help']) {
    const open = async () => {
      await page.getByRole('button', { name: menu, exact: true }).click();
      await shown.waitFor();
    };
    const close = async () => {
      await page.keyboard.press('Escape');
      await shown.waitFor({ state: 'detached' });
    };
    await open();
    const enabled = await entries.evaluateAll((all) =>
      all.flatMap((each, at) => (each.ariaDisabled === 'true' ? [] : [{ at, what: each.textContent ?? '' }])),
    );
    await close();
    for (const { at, what } of enabled)
      await into(`${menu}, ${what}`, async () => {
        await open();
        await entries.nth(at).click();
      });
  }
}
