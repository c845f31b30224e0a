import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Build } from '../../boards/document/build';
import { serialize } from '../../boards/document/serialize';
import { buildIn, demoFile } from './bench-work';
import { saveAs } from './files';
import { tabTo } from './keys';
import { findingsIn, plain } from './reading';
import { chosenName } from './tray-hands';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

const wired = buildIn(demoFile('wired.build.json'));
const { tray } = wired.case;
if (tray === undefined) throw new Error('The demo has no tray');

/** A standoff that is left from a larger board: under this one, where it has no hole. */
const LEFT = { id: 'left-over', name: 'Z', xMm: 100, yMm: 120, seen: 'set' as const };
const WITH_ONE_LEFT: Build = {
  ...wired,
  case: { ...wired.case, tray: { ...tray, standoffs: [...(tray.standoffs ?? []), LEFT] } },
};

const DANGER = { severity: 'Danger', title: 'Standoff Z would short the board.' };

async function opened(): Promise<Page> {
  const file = join(workplace.home, 'bench.build.json');
  writeFileSync(file, serialize(WITH_ONE_LEFT));
  const page = await workplace.open([file]);
  await page.getByRole('list', { name: 'Findings', exact: true }).waitFor();
  return page;
}

/** One of the two buttons of a place or a fan. */
function choiceAt(page: Page, group: string, name: string) {
  return page.getByRole('radiogroup', { name: group }).getByRole('radio', { name, exact: true });
}

describe('a standoff that would short the board', () => {
  it('is a danger before power, found on the map, taken out, and undone by keyboard alone', async () => {
    const page = await opened();
    expect(await findingsIn(page)).toContainEqual(DANGER);

    await tabTo(page, page.getByRole('button', { name: DANGER.title }));
    await page.keyboard.press('Enter');
    await expect.poll(() => chosenName(page)).toBe('Z');
    await page.getByRole('heading', { name: /^Standoffs, 1 danger/ }).waitFor();

    await tabTo(page, choiceAt(page, 'Standoff Z: what is there', 'In'));
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: /^Standoffs, 1 doubt/ }).waitFor();

    await page.keyboard.press('Control+2');
    await expect.poll(() => findingsIn(page)).not.toContainEqual(DANGER);
    await page.keyboard.press('Control+z');
    await expect.poll(() => findingsIn(page)).toContainEqual(DANGER);
  });

  it('stands in the step that sets the standoffs, which says what to take out', async () => {
    const page = await opened();
    await page.keyboard.press('Control+5');
    const steps = page.getByRole('grid', { name: 'Steps in order' });
    await steps.getByRole('row').filter({ hasText: 'Set the standoffs' }).click();
    const step = page.getByRole('main', { name: 'Step' });
    await expect
      .poll(async () => plain(await step.textContent()))
      .toContain('Take out standoff Z: the board has no hole there.');
    await step.getByRole('img', { name: /^The board over the standoffs/ }).waitFor();
    expect(plain(await step.textContent())).toContain(DANGER.title);
  });

  it('is noted with all the others at once, and kept in the file', async () => {
    const page = await opened();
    await page.keyboard.press('Control+3');
    await page.getByRole('heading', { name: /^Standoffs/ }).click();
    await page.getByRole('button', { name: 'All are as listed' }).click();
    await saveAs(page, 'looked.build.json');
    const seen = buildIn(join(workplace.home, 'looked.build.json')).case.tray?.standoffs;
    expect(seen?.find(({ id }) => id === LEFT.id)?.seen).toBe('empty');
    expect(seen?.filter(({ seen: each, fixed }) => each === undefined && !fixed)).toEqual([]);
  });
});

describe('the air of a case', () => {
  it('is told again when the struts of a fan turn out to look the other way', async () => {
    const page = await opened();
    await page.keyboard.press('Control+3');
    await page.getByRole('heading', { name: 'Air', exact: true }).click();
    const said = page.getByRole('list', { name: 'What the fans do together' });
    expect(plain(await said.textContent())).toContain('1 fan blows in (up to 85 m³/h), 1 fan blows out');
    await choiceAt(page, 'Rear fan: its struts look', 'Inward').click();
    await expect
      .poll(async () => plain(await said.textContent()))
      .toContain('2 fans blow in (up to 155 m³/h), none blows out.');
    await page.keyboard.press('Control+z');
    await expect.poll(async () => plain(await said.textContent())).toContain('1 fan blows out');
  });
});
