import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { buildIn, demoFile, RIGHT_SEATS, UNWIRED, withSeat } from './bench-work';
import { checkByCommandLine } from './command-line';
import { chooseFile, openFile, saveAs } from './files';
import { seatByMouse } from './hands';
import { findingsIn, findingsOf, leadsIn, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

it('a machine is wired by mouse from library sheets, saved, opened again and checked from the command line', async () => {
  const page = await workplace.open();
  copyFileSync(demoFile('bench.board.json'), join(workplace.home, 'bench.board.json'));
  await beginBuild(page);
  expect(await leadsIn(page, 'On the shelf')).toHaveLength(RIGHT_SEATS.length);

  let build = UNWIRED;
  for (const seat of RIGHT_SEATS) {
    await seatByMouse(page, build, seat);
    build = withSeat(build, seat);
  }
  expect(await leadsIn(page, 'On the shelf')).toEqual([]);
  const found = await findingsIn(page);
  expect(found.map(({ severity }) => severity)).not.toContain('Danger');
  expect(found.map(({ severity }) => severity)).not.toContain('Fault');

  await saveAs(page, 'reading-room.build.json');
  const file = join(workplace.home, 'reading-room.build.json');
  expect(buildIn(file).seats).toEqual(RIGHT_SEATS);

  const seated = await leadsIn(page, 'Seated');
  const fresh = await workplace.open();
  await openFile(fresh, 'reading-room.build.json');
  await expect.poll(() => leadsIn(fresh, 'Seated')).toEqual(seated);
  expect(await stateOf(fresh)).toBe('saved in reading-room.build.json');
  expect(await findingsIn(fresh)).toEqual(found);
  expect(findingsOf(await checkByCommandLine(file))).toEqual(found);
});

/** New build: the board from a file, the case from the library. */
async function beginBuild(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'New build' }).click();
  const dialog = page.getByRole('dialog', { name: 'New build' });
  await dialog.getByRole('textbox', { name: 'Name of the machine' }).fill('Reading room 1');
  await dialog.getByRole('button', { name: 'From a file…, board sheet' }).click();
  await chooseFile(page, 'bench.board.json');
  await dialog.getByRole('button', { name: 'The demo’s, case sheet' }).click();
  for (const sheet of ['Tern B2', 'Reading-room case']) await dialog.getByText(sheet).waitFor();
  await dialog.getByRole('button', { name: 'Start the build' }).click();
  await page.getByRole('grid', { name: 'Leads' }).waitFor();
}
