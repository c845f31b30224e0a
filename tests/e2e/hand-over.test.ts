import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { benchStepsOf } from '../../boards/handover/steps/bench-steps';
import { stepWords } from '../../boards/handover/steps/step-words';
import { tickOf } from '../../boards/handover/steps/ticks';
import { wired } from '../boards/library/demo-files';
import { buildIn, demoFile } from './bench-work';
import { plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

/** The smallest letters of the large steps, to be read from two metres. */
const LEAST_PX = 32;
const UNSEAT_ALL = 'Take off all leads';

const steps = (() => {
  const order = benchStepsOf(wired);
  if (!order.ok) throw new Error('The demo has a ring');
  return order.value;
})();
const titles = steps.map((step) => plain(stepWords(wired, step).title));

async function handOver(name: string): Promise<{ readonly page: Page; readonly file: string }> {
  const file = join(workplace.home, name);
  copyFileSync(demoFile(name), file);
  const page = await workplace.open([file]);
  await page.keyboard.press('Control+5');
  await page.getByRole('main', { name: 'Step' }).waitFor();
  return { page, file };
}

const largeOf = (page: Page) => page.getByRole('dialog');
const titleOf = async (page: Page) =>
  plain(await largeOf(page).getByRole('heading', { level: 2 }).textContent());
const rowsOf = (page: Page) => page.getByRole('grid', { name: 'Steps in order' }).getByRole('row');

/** The smallest letters of the large steps, in pixels of the screen; those of the drawing as it is scaled. */
async function smallestLetters(page: Page): Promise<number> {
  return largeOf(page).evaluate((dialog) => {
    const sizes: number[] = [];
    const walker = document.createTreeWalker(dialog, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement;
      if (!element || !node.textContent?.trim() || element.closest('.aside-hidden')) continue;
      if (element.checkVisibility({ visibilityProperty: true, opacityProperty: true }) === false) continue;
      const scale = element instanceof SVGGraphicsElement ? (element.getScreenCTM()?.a ?? 1) : 1;
      sizes.push(Number.parseFloat(getComputedStyle(element).fontSize) * Math.abs(scale));
    }
    return Math.min(...sizes);
  });
}

it('the demo is stepped through in large letters by one key, back and on, and the ticks are in the file', async () => {
  const { page, file } = await handOver('wired.build.json');
  await page.keyboard.press('F9');
  await expect.poll(() => titleOf(page)).toBe(titles[0]);

  await page.keyboard.press('Space');
  await expect.poll(() => titleOf(page)).toBe(titles[1]);
  await page.keyboard.press('Backspace');
  await expect.poll(() => titleOf(page)).toBe(titles[0]);
  await page.keyboard.press('Enter');
  const smallest: number[] = [];
  for (const [at, title] of titles.entries()) {
    if (at === 0) continue;
    await expect.poll(() => titleOf(page)).toBe(title);
    smallest.push(await smallestLetters(page));
    await page.keyboard.press(at % 2 === 0 ? 'Space' : 'Enter');
  }
  // Numbers in pins are drawn in millimetres, so a hundredth of a pixel may be lost on the way.
  expect(Math.min(...smallest)).toBeGreaterThan(LEAST_PX - 0.1);
  await largeOf(page).getByText(`${titles.length} of ${titles.length} done`).waitFor();
  await page.keyboard.press('Enter');
  await largeOf(page).waitFor({ state: 'detached' });

  await page.keyboard.press('Control+S');
  await expect.poll(() => stateOf(page)).toBe('saved in wired.build.json');
  expect(buildIn(file).done).toEqual(steps.map(tickOf));
});

it('leaving keeps the place, and undo takes a tick away', async () => {
  const { page, file } = await handOver('wired.build.json');
  await page.keyboard.press('F9');
  for (const title of titles.slice(0, 3)) {
    await expect.poll(() => titleOf(page)).toBe(title);
    await page.keyboard.press('Enter');
  }
  await page.keyboard.press('Escape');
  await largeOf(page).waitFor({ state: 'detached' });
  await page
    .getByRole('main', { name: 'Step' })
    .getByRole('heading', { name: titles[3] ?? '' })
    .waitFor();
  const third = page.getByRole('checkbox', { name: `Done: ${titles[2]}` });
  await expect.poll(() => third.isChecked()).toBe(true);
  await page.keyboard.press('Control+Z');
  await expect.poll(() => third.isChecked()).toBe(false);
  await page.keyboard.press('Control+S');
  await expect.poll(() => stateOf(page)).toBe('saved in wired.build.json');
  expect(buildIn(file).done).toEqual(steps.slice(0, 2).map(tickOf));

  await workplace.kill();
  const again = await workplace.open([file]);
  await again.keyboard.press('F9');
  await expect.poll(() => titleOf(again)).toBe(titles[2]);
});

it('a plug that has been moved is to do again', async () => {
  const { page } = await handOver('wired.build.json');
  const title = titles.find((each) => each.startsWith('Power LED on'));
  const box = page.getByRole('checkbox', { name: `Done: ${title}` });
  const row = rowsOf(page).filter({ has: box });
  await row.locator('.check').click();
  await expect.poll(() => box.isChecked()).toBe(true);
  await row.press('Space');
  await expect.poll(() => box.isChecked()).toBe(false);
  await box.press('Space');
  await expect.poll(() => box.isChecked()).toBe(true);
  await page.keyboard.press('Control+2');
  await page.getByRole('grid', { name: 'Leads' }).locator('[role="row"][aria-label^="Power LED, "]').click();
  await page.getByRole('button', { name: 'Turn round' }).click();
  await page.keyboard.press('Control+5');
  const turned = page.getByRole('checkbox', { name: /^Done: Power LED on/ });
  await expect.poll(() => turned.isChecked()).toBe(false);
});

it('a machine with a graphics card has a step for it after all leads, and one without has none', async () => {
  const { page } = await handOver('wired.build.json');
  const card = rowsOf(page).filter({ hasText: 'graphics card' });
  expect(await card.count()).toBe(0);
  await page.getByRole('tab', { name: 'This machine' }).click();
  await page.getByRole('checkbox', { name: 'Graphics card' }).press('Space');
  await page.getByRole('tab', { name: 'Steps' }).click();
  await expect.poll(() => card.count()).toBe(1);
  const listed = (await rowsOf(page).allTextContents()).map(plain);
  expect(listed.findIndex((each) => each.includes('graphics card'))).toBe(listed.length - 2);
});

it('a meter step shows what has to be read, and where the probes go as the board lies', async () => {
  const { page } = await handOver('wired.build.json');
  await rowsOf(page).filter({ hasText: 'Measure the power switch' }).getByText('Measure').click();
  const step = page.getByRole('main', { name: 'Step' });
  const said = () => step.textContent().then(plain);
  // The demo's switch lies on pins 6 and 8; any switch at rest is open, or what the board holds behind it.
  await expect.poll(said).toContain('Ohms, one probe on pin 6, the other on pin 8 of PANEL, button released');
  expect(await said()).toMatch(/button held:less than \d/);
  await step.getByRole('img', { name: 'PANEL as it lies, with the two probes in rings' }).waitFor();

  const places = () =>
    step
      .locator('.close-up-pin text')
      .evaluateAll((texts) =>
        Object.fromEntries(texts.map((text) => [text.textContent, text.getBoundingClientRect().x])),
      );
  const before = await places();
  expect(before['1']).toBeLessThan(before['9'] ?? 0);
  await step.getByRole('button', { name: 'Turn the view' }).press('Enter');
  await step.getByRole('button', { name: 'Turn the view' }).press('Enter');
  await expect.poll(async () => (await places())['1']).toBeGreaterThan((await places())['9'] ?? 0);
});

it('warns before the first step while the checks name dangers, and says where to look', async () => {
  const { page } = await handOver('eight-slips.build.json');
  const warning = page.getByRole('main', { name: 'Step' }).getByRole('note');
  expect(plain(await warning.textContent())).toMatch(
    /^The wiring has \d+ dangers? and \d+ faults?\. Look at Wire first/,
  );
  await warning.getByRole('button', { name: 'Go to Wire' }).click();
  await page.getByRole('main', { name: 'Board' }).waitFor();
});

it('says so where no plug is seated, and lists no plug', async () => {
  const { page } = await handOver('wired.build.json');
  await page.getByRole('button', { name: 'Edit', exact: true }).click();
  await page.getByRole('menuitem', { name: UNSEAT_ALL }).click();
  const step = page.getByRole('main', { name: 'Step' });
  await step.getByText('No plug is seated yet').waitFor();
  expect(await rowsOf(page).filter({ hasText: ' of PANEL' }).count()).toBe(0);
  await step.getByRole('button', { name: 'Go to Wire' }).click();
  await page.getByRole('main', { name: 'Board' }).waitFor();
});
