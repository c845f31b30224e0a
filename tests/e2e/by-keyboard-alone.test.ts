import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { buildIn, RIGHT_SEATS, UNWIRED, withSeat } from './bench-work';
import { checkByCommandLine } from './command-line';
import { arrowTo, seatByKeys, tabTo } from './keys';
import { findingsIn, findingsOf, leadsIn, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

it('a machine is wired, saved and opened again with no pointer at all', async () => {
  const page = await workplace.open();
  const pointed = await countPointing(page);
  await beginBuildByKeys(page);

  let build = UNWIRED;
  for (const seat of RIGHT_SEATS) {
    await seatByKeys(page, build, seat);
    build = withSeat(build, seat);
  }
  const found = await findingsIn(page);
  expect(found.map(({ severity }) => severity)).not.toContain('Danger');
  expect(found.map(({ severity }) => severity)).not.toContain('Fault');
  const seated = await leadsIn(page, 'Seated');

  await page.keyboard.press('Control+S');
  await tabTo(page, page.getByRole('textbox', { name: 'Name of the file' }));
  await page.keyboard.press('Control+A');
  await page.keyboard.type('by-keys.build.json');
  await tabTo(page, page.getByRole('button', { name: 'Save', exact: true }));
  await page.keyboard.press('Enter');
  await expect.poll(() => stateOf(page)).toBe('saved in by-keys.build.json');
  const file = join(workplace.home, 'by-keys.build.json');
  expect(buildIn(file).seats).toEqual(RIGHT_SEATS);
  expect(findingsOf(await checkByCommandLine(file))).toEqual(found);

  await page.keyboard.press('Control+W');
  await page.getByRole('heading', { name: 'Worked on last' }).waitFor();
  await page.keyboard.press('Control+O');
  const option = page.getByRole('option', { name: 'by-keys.build.json' });
  await arrowTo(page, option);
  await page.keyboard.press('Enter');
  await expect.poll(() => leadsIn(page, 'Seated')).toEqual(seated);
  expect(pointed()).toBe(0);
});

async function beginBuildByKeys(page: Page): Promise<void> {
  await page.keyboard.press('Control+N');
  await tabTo(page, page.getByRole('textbox', { name: 'Name of the machine' }));
  await page.keyboard.press('Control+A');
  await page.keyboard.type('Reading room 2');
  for (const name of ['The demo’s, board sheet', 'The demo’s, case sheet', 'Start the build']) {
    await tabTo(page, page.getByRole('button', { name }));
    await page.keyboard.press('Enter');
  }
  await page.getByRole('grid', { name: 'Leads' }).waitFor();
}

/** How often anything of a mouse, a pen or a finger has reached the page from now on. */
async function countPointing(page: Page): Promise<() => number> {
  let count = 0;
  await page.exposeFunction('pointedAt', () => {
    count++;
  });
  await page.evaluate(() => {
    const kinds = [
      'pointerdown',
      'pointermove',
      'pointerup',
      'mousedown',
      'mousemove',
      'touchstart',
      'wheel',
    ];
    for (const kind of kinds) window.addEventListener(kind, () => window.pointedAt?.(), { capture: true });
  });
  return () => count;
}

declare global {
  interface Window {
    readonly pointedAt?: () => void;
  }
}
