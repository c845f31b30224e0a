import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { serialize } from '../../boards/document/serialize';
import { largeBuild } from '../boards/large-build';
import { wired } from '../boards/library/demo-files';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');
/** More than a hundred leads, more than fifty findings, more lamps than three rows. */
const COPIES = 14;

it('leads, findings and lamps of many machines leave the board its room, and all can be come to', async () => {
  const file = join(workplace.home, 'many.build.json');
  writeFileSync(file, serialize(largeBuild(wired, COPIES)));
  const page = await workplace.open([file]);
  const board = page.locator('.board-canvas');
  await board.waitFor();
  const leads = page.getByRole('grid', { name: 'Leads' });
  const rows = leads.locator('[role="row"][aria-label]');
  await rows.first().waitFor();
  expect(await rows.count()).toBeLessThan(COPIES);
  expect((await board.boundingBox())?.height).toBeGreaterThan(300);

  await rows.first().click();
  await page.keyboard.press('End');
  // Of the last machine, on pins of a connector whose print ends in its number.
  await leads.locator(`[role="row"][aria-selected="true"][aria-label*=" ${COPIES},"]`).waitFor();

  const findings = page.getByRole('list', { name: 'Findings' }).locator('.finding');
  expect(await findings.count()).toBe(50);
  await page.getByRole('button', { name: /^Show the last/ }).click();
  await expect.poll(() => findings.count()).toBeGreaterThan(50);
  // The button is gone with the last of them: the focus goes on to the first that it showed.
  expect(await findings.nth(50).locator(':focus').count()).toBe(1);
});
