import { copyFileSync, existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { textOf, wired } from '../boards/library/demo-files';
import { buildIn, demoFile } from './bench-work';
import { chooseFile } from './files';
import { takeOff } from './hands';
import { leadsIn, messageIn, plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');
const SPEAKER = { lead: 'speaker', plug: 'plug' };
const AUDIO = { lead: 'front-audio', plug: 'plug' };

/** The wired demo as a file of one's own, open, with its speaker taken off. */
async function workOnDemo(): Promise<Page> {
  copyFileSync(demoFile('wired.build.json'), join(workplace.home, 'study.build.json'));
  copyFileSync(demoFile('eight-slips.build.json'), join(workplace.home, 'other.build.json'));
  const page = await workplace.open([join(workplace.home, 'study.build.json')]);
  await takeOff(page, wired, SPEAKER);
  expect(await stateOf(page)).toBe('1 unsaved change');
  return page;
}

const WAYS_OUT: readonly { readonly way: string; readonly go: (page: Page) => Promise<void> }[] = [
  {
    way: 'another file',
    go: async (page) => {
      await page.keyboard.press('Control+O');
      await chooseFile(page, 'other.build.json');
    },
  },
  {
    way: 'a new build',
    go: async (page) => {
      await page.keyboard.press('Control+N');
      await page.getByRole('button', { name: 'Start the build' }).click();
    },
  },
  { way: 'closing', go: (page) => page.keyboard.press('Control+W') },
];

it.each(WAYS_OUT)('$way asks what becomes of unsaved work, and does as it is told', async ({ go }) => {
  const page = await workOnDemo();
  await go(page);
  expect(await messageIn(page)).toContain('Save the changes to “Study machine 3”?');
  await page.getByRole('button', { name: 'Cancel' }).click();
  expect(await stateOf(page)).toBe('1 unsaved change');

  await go(page);
  await page.getByRole('button', { name: 'Don’t save' }).click();
  await page.getByRole('heading', { level: 1, name: 'Study machine 3' }).waitFor({ state: 'detached' });
  expect(readFileSync(join(workplace.home, 'study.build.json'), 'utf8')).toBe(textOf('wired.build.json'));
  await expect.poll(recoveryCopies).toEqual([]);
});

it('closing a build with unsaved work saves it first where that is chosen', async () => {
  const page = await workOnDemo();
  await page.keyboard.press('Control+W');
  await page.getByRole('alertdialog').getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByRole('heading', { level: 1, name: 'Leadwright' }).waitFor();
  const { seats } = buildIn(join(workplace.home, 'study.build.json'));
  expect(seats.map(({ lead }) => lead)).not.toContain('speaker');
});

it('closing the window with unsaved work makes the browser ask; without, it just closes', async () => {
  const page = await workOnDemo();
  const asked = page.waitForEvent('dialog');
  await page.close({ runBeforeUnload: true });
  const question = await asked;
  expect(question.type()).toBe('beforeunload');
  await question.dismiss();
  await page.keyboard.press('Control+Z');
  await expect.poll(() => stateOf(page)).toBe('saved in study.build.json');
  const closed = page.waitForEvent('close');
  await page.close({ runBeforeUnload: true });
  await closed;
});

describe('work that was not saved when the program was killed', () => {
  it('is offered with the number of its changes, taken up again, and gone from the offer once saved', async () => {
    const page = await workOnDemo();
    await takeOff(page, wired, AUDIO);
    await expect.poll(keptChanges, { timeout: 15_000 }).toBe(2);
    await workplace.kill();

    const again = await workplace.open();
    const offer = again.getByRole('region', { name: 'Not saved last time' });
    expect(plain(await offer.textContent())).toMatch(/study\.build\.json2 changes, kept today/);
    await offer.getByRole('button', { name: 'Take up again: study.build.json' }).click();
    await again.getByRole('grid', { name: 'Leads' }).waitFor();
    expect(await leadsIn(again, 'On the shelf')).toHaveLength(2);
    expect(await stateOf(again)).toBe('recovered, not saved');

    await again.keyboard.press('Control+S');
    await expect.poll(() => stateOf(again)).toBe('saved in study.build.json');
    const seated = buildIn(join(workplace.home, 'study.build.json')).seats.map(({ lead }) => lead);
    expect(seated).not.toContain('speaker');
    expect(seated).not.toContain('front-audio');
    await workplace.kill();
    const third = await workplace.open();
    await third.getByRole('heading', { name: 'Worked on last' }).waitFor();
    expect(await third.getByRole('region', { name: 'Not saved last time' }).count()).toBe(0);
  });

  it('can be thrown away, and the file stays as it was', async () => {
    await workOnDemo();
    await expect.poll(keptChanges, { timeout: 15_000 }).toBe(1);
    await workplace.kill();
    const again = await workplace.open();
    await again.getByRole('button', { name: 'Throw away: study.build.json' }).click();
    await again.getByRole('region', { name: 'Not saved last time' }).waitFor({ state: 'detached' });
    expect(readFileSync(join(workplace.home, 'study.build.json'), 'utf8')).toBe(textOf('wired.build.json'));
    expect(recoveryCopies()).toEqual([]);
  });
});

it('a second window is not offered what is open in the first, and is once that has gone', async () => {
  const page = await workOnDemo();
  await expect.poll(keptChanges, { timeout: 15_000 }).toBe(1);
  const second = await workplace.open();
  await second.getByRole('heading', { name: 'Worked on last' }).waitFor();
  expect(await second.getByRole('region', { name: 'Not saved last time' }).count()).toBe(0);
  await page.context().close();
  await expect
    .poll(async () => {
      await second.reload();
      await second.getByRole('heading', { name: 'Worked on last' }).waitFor();
      return second.getByRole('region', { name: 'Not saved last time' }).count();
    })
    .toBe(1);
});

it('each save keeps what the file held; an earlier version is opened as unsaved work, and saved again', async () => {
  const page = await workOnDemo();
  await page.keyboard.press('Control+S');
  await expect.poll(() => stateOf(page)).toBe('saved in study.build.json');
  await page.getByRole('button', { name: 'File', exact: true }).click();
  await page.getByRole('menuitem', { name: 'Earlier versions…' }).click();
  const dialog = page.getByRole('dialog', { name: 'Earlier versions of study.build.json' });
  await expect
    .poll(async () => plain(await dialog.getByRole('listitem').first().textContent()))
    .toMatch(/^Saved today at \d\d:\d\das it is on the screen/);
  await expect
    .poll(async () => plain(await dialog.getByRole('listitem').last().textContent()))
    .toMatch(/\d+ connectors, \d+ leads, \d+ plugs seated/);
  await dialog
    .getByRole('button', { name: /^Open as it was saved/ })
    .last()
    .click();
  await dialog.waitFor({ state: 'detached' });
  await expect.poll(() => stateOf(page)).toBe('recovered, not saved');
  expect(await leadsIn(page, 'On the shelf')).toHaveLength(0);
  expect(buildIn(join(workplace.home, 'study.build.json')).seats.map(({ lead }) => lead)).not.toContain(
    'speaker',
  );
  await page.keyboard.press('Control+S');
  await expect.poll(() => stateOf(page)).toBe('saved in study.build.json');
  expect(readFileSync(join(workplace.home, 'study.build.json'), 'utf8')).toBe(textOf('wired.build.json'));
});

/** How many changes the newest recovery copy on disk holds. */
function keptChanges(): number {
  const heads = recoveryCopies()
    .filter((name) => name.endsWith('.copy'))
    .map((name) => JSON.parse(readFileSync(join(recoveryFolder(), name), 'utf8').split('\n')[0] ?? ''));
  return heads.sort((first, second) => second.serial - first.serial)[0]?.changes ?? 0;
}

function recoveryCopies(): readonly string[] {
  return existsSync(recoveryFolder()) ? readdirSync(recoveryFolder()) : [];
}

function recoveryFolder(): string {
  return join(`${workplace.home}-data`, 'recovery');
}
