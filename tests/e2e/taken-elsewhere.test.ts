import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { Seat } from '../../boards/document/build';
import { wired } from '../boards/library/demo-files';
import { demoFile } from './bench-work';
import { expectSeated, pointOnScreen, takeOff, titleOf } from './hands';
import { leadsIn } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

/** Far from the header that the drawing shows first. */
const FAN: Seat = { lead: 'cpu-fan', plug: 'plug', connector: 'fan-cpu', at: [0, 0], turn: 0 };
const TITLE = titleOf(wired, FAN);

/** The demo with the fan off its pins and chosen, as a fresh window shows it. */
async function withFanOff(): Promise<Page> {
  copyFileSync(demoFile('wired.build.json'), join(workplace.home, 'wired.build.json'));
  const page = await workplace.open([join(workplace.home, 'wired.build.json')]);
  await takeOff(page, wired, FAN);
  return page;
}

const inHand = (page: Page) => page.getByRole('application', { name: new RegExp(`^${TITLE} in the hand`) });

it('a plug taken into the hand in Document is seated on the board, where its place is in sight', async () => {
  const page = await withFanOff();
  await page.keyboard.press('Control+1');
  await page.getByRole('main', { name: 'Document' }).waitFor();
  await page.keyboard.press('Control+Enter');
  await inHand(page).waitFor();
  await expect.poll(() => isInSight(page)).toBe(true);
  await page.keyboard.press('Enter');
  await inHand(page).waitFor({ state: 'detached' });
  await expectSeated(page, wired, FAN);
});

it('what is searched for in Hand over is shown on the board', async () => {
  const page = await withFanOff();
  await page.keyboard.press('Control+5');
  await page.getByRole('grid', { name: 'Leads' }).waitFor({ state: 'detached' });
  await page.keyboard.press('Control+K');
  const search = page.getByRole('dialog', { name: 'Search everything' });
  await search.getByRole('searchbox').fill('FAN_CPU connector');
  await search.getByRole('option', { name: 'FAN_CPU connector', exact: false }).first().click();
  await page.getByRole('grid', { name: 'Leads' }).waitFor();
  await expect.poll(() => isInSight(page)).toBe(true);
});

it('a plug taken into the hand in Hand over is put back by Escape', async () => {
  const page = await withFanOff();
  await page.keyboard.press('Control+5');
  await page.getByRole('grid', { name: 'Leads' }).waitFor({ state: 'detached' });
  await page.keyboard.press('Control+Enter');
  await inHand(page).waitFor();
  await page.keyboard.press('Escape');
  await inHand(page).waitFor({ state: 'detached' });
  expect(await leadsIn(page, 'On the shelf')).toContainEqual(
    expect.stringMatching(new RegExp(`^${TITLE}, `)),
  );
});

/** Whether the place of the fan is within the drawing of the board. */
async function isInSight(page: Page): Promise<boolean> {
  const box = await page.getByRole('main', { name: 'Board' }).boundingBox();
  if (box === null) return false;
  const { x, y } = await pointOnScreen(page, wired, FAN);
  return x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height;
}
