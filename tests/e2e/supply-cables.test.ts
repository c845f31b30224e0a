import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { Build } from '../../boards/document/build';
import { serialize } from '../../boards/document/serialize';
import { bench } from '../boards/findings/harness';
import { supplies } from '../boards/findings/supplies';
import { checkByCommandLine } from './command-line';
import { arrowTo, tabTo } from './keys';
import { findingsIn, findingsOf, plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

/** A machine on the supply Birch with its own cables; those of another supply, Ash, lie in the same drawer. */
function machine(): Build {
  const { build } = supplies({ cables: 'birch', outlets: 'birch' }).bench;
  const others = bench().unit('supply-modular-ash', 'ash').build.extras;
  return { ...build, extras: [...build.extras, ...others] };
}

const dialog = (page: Page) => page.getByRole('dialog');
const dangers = async (page: Page) =>
  (await findingsIn(page)).filter(({ severity }) => severity === 'Danger').map(({ title }) => title);

async function press(page: Page, button: Locator): Promise<void> {
  await tabTo(page, button);
  await page.keyboard.press('Enter');
}

/** Opens a connector of a unit from the list, by keys alone. */
async function openSocket(page: Page, name: string, what: string): Promise<void> {
  const list = page.getByRole('treegrid', { name: 'Units' });
  const row = list.locator(`[role="row"][aria-label^="${name}, ${what}"]`);
  await tabTo(page, list);
  await page.keyboard.press('Home');
  await arrowTo(page, row);
  await page.keyboard.press('Enter');
  await dialog(page).getByRole('region', { name, exact: true }).waitFor();
}

it('a cable of another supply on the like outlet: exchanged by keys, told with the volts that arrive, and put right', async () => {
  const file = join(workplace.home, 'machine.build.json');
  writeFileSync(file, serialize(machine()));
  const page = await workplace.open([file]);
  await page.getByRole('main', { name: 'Board' }).getByRole('img').waitFor();
  expect(await dangers(page)).toEqual([]);

  const units = page.getByRole('tab', { name: 'Units' });
  await tabTo(page, page.getByRole('tablist', { name: 'What the shelf lists' }));
  await page.keyboard.press('End');
  await expect.poll(() => units.getAttribute('aria-selected')).toBe('true');

  // At the supply: its own SATA cable comes off, that of the other goes on. It fits.
  await openSocket(page, 'DRIVES 1', 'drive outlet');
  expect(plain(await dialog(page).textContent())).toContain('leads to POWER of DISK');
  await press(page, dialog(page).getByRole('button', { name: 'Take off SATA cable of BIRCH, plug supply' }));
  await press(page, dialog(page).getByRole('button', { name: 'Seat here SATA cable of ASH, plug supply' }));
  await page.keyboard.press('Escape');
  await dialog(page).waitFor({ state: 'detached' });

  // At the drive.
  await openSocket(page, 'POWER', 'SATA power');
  await press(page, dialog(page).getByRole('button', { name: 'Take off SATA cable of BIRCH, SATA 1' }));
  await press(page, dialog(page).getByRole('button', { name: 'Seat here SATA cable of ASH, SATA 1' }));
  const seventh = dialog(page).getByRole('table').getByRole('row').nth(7);
  expect(plain(await seventh.textContent())).toContain('+12 V from pin 3 of DRIVES 1 of BIRCH');
  await page.keyboard.press('Escape');

  const title = '+12 V would reach the +5 V pins of POWER of DISK and could destroy what is there.';
  // The second plug of that cable hangs loose, and would do the same.
  const loose = 'Whatever is plugged into SATA cable of ASH (SATA 2) would get +12 V where it has +5 V.';
  await expect.poll(() => dangers(page)).toEqual([title, loose]);
  const told = plain(await page.getByRole('list', { name: 'Findings', exact: true }).textContent());
  expect(told).toContain('Pins 7 to 9 (+5 V) would get +12 V, from pin 3 of DRIVES 1 of BIRCH.');
  expect(told).toContain('Pins 13 to 15 (+12 V) would get +5 V, from pin 1 of DRIVES 1 of BIRCH.');

  await page.keyboard.press('Control+S');
  await expect.poll(() => stateOf(page)).toMatch(/^saved/);
  const checked = findingsOf(await checkByCommandLine(file));
  expect(checked).toEqual(await findingsIn(page));

  // What the finding offers takes the cable off the supply; five steps back the machine is as it was.
  await page
    .getByRole('button', {
      name: 'Take SATA cable of ASH off BIRCH, and use a cable that came with that supply.',
    })
    .first()
    .click();
  await expect.poll(() => dangers(page)).toEqual([]);
  for (let steps = 0; steps < 5; steps++) await page.keyboard.press('Control+Z');
  await expect.poll(() => stateOf(page)).toMatch(/^4 unsaved/);
  await page.keyboard.press('Control+S');
  await expect.poll(() => stateOf(page)).toMatch(/^saved/);
  expect(readFileSync(file, 'utf8')).toBe(serialize(machine()));
}, 120_000);

it('a supply of one’s own is made from blank, and its outlet drawn, filled and fed on', async () => {
  const file = join(workplace.home, 'bare.build.json');
  writeFileSync(
    file,
    serialize(bench().header('cpu-power-2x4', 'cpu').lead('cpu-power-cable-8', 'cable').build),
  );
  const page = await workplace.open([file]);
  await page.getByRole('main', { name: 'Board' }).getByRole('img').waitFor();
  await page.getByRole('tab', { name: 'Units' }).click();
  await page.getByRole('button', { name: 'Add a unit…' }).click();
  await dialog(page).getByRole('searchbox').fill('blank: supply');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await dialog(page).getByRole('heading', { name: 'Supply unit' }).waitFor();
  await dialog(page).getByRole('button', { name: 'Add', exact: true }).click();
  await dialog(page).getByRole('region', { name: 'OUTLET 1' }).waitFor();
  await dialog(page)
    .getByRole('button', { name: /^Seat here CABLE/ })
    .first()
    .click();
  await page.keyboard.press('Escape');
  await expect
    .poll(async () => (await findingsIn(page)).map(({ title }) => title))
    .toEqual(['What the outlets of Supply unit carry is not known.']);
}, 60_000);
