import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { faultsAsWritten } from '../../boards/diagnosis/faults/as-written';
import { CAUSES } from '../../boards/diagnosis/faults/causes';
import { resultName, trialWordsIn } from '../../boards/diagnosis/log/log-words';
import { type ObservationId, observationNamed } from '../../boards/diagnosis/observations/observations';
import { predict } from '../../boards/diagnosis/predict';
import { trialsOf } from '../../boards/diagnosis/trials/trials';
import type { Build } from '../../boards/document/build';
import { serialize } from '../../boards/document/serialize';
import { logOf } from '../../boards/document/trouble';
import { wired } from '../boards/library/demo-files';
import { buildIn, demoFile } from './bench-work';
import { arrowTo, tabTo } from './keys';
import { plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const NAME = 'bench.build.json';

const asked = (id: ObservationId) => observationNamed(id)?.question ?? id;

async function diagnose(build: Build | null): Promise<{ readonly page: Page; readonly file: string }> {
  const file = join(workplace.home, NAME);
  if (build === null) copyFileSync(demoFile('wired.build.json'), file);
  else writeFileSync(file, serialize(build));
  const page = await workplace.open([file]);
  await page.keyboard.press('Control+4');
  // What each fault would show is worked out once; a slow machine takes its time for that.
  await suspectsIn(page).first().waitFor({ timeout: 60_000 });
  return { page, file };
}

const suspectsIn = (page: Page) => page.getByRole('listbox', { name: /^Suspects/ }).getByRole('option');
const firstIn = async (page: Page) => plain(await suspectsIn(page).first().textContent());
/** Until what was said last is reckoned with. */
const reckoned = (page: Page) =>
  page.locator('.diagnose-area:not(:has([aria-busy="true"]))').waitFor({ timeout: 60_000 });
const trialIn = (page: Page) => page.getByRole('complementary', { name: 'What to do' });
const buttonFor = (page: Page, id: ObservationId, said: 'Yes' | 'No' | 'Not looked') =>
  page.getByRole('grid', { name: 'All questions' }).getByRole('button', { name: `${said}: ${asked(id)}` });

async function save(page: Page, file: string): Promise<Build> {
  await page.keyboard.press('Control+S');
  await expect.poll(() => stateOf(page)).toBe(`saved in ${NAME}`);
  return buildIn(file);
}

async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: { run: () => Promise<AxeResults> } };
    const { violations: found } = await axe.run();
    return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(' | ')}`);
  });
}

/** The build with the plug of the power switch one pin further on. */
const oneOff: Build = {
  ...wired,
  seats: wired.seats.map((seat) =>
    seat.lead === 'power-switch' ? { ...seat, at: [seat.at[0], seat.at[1] + 1] } : seat,
  ),
};

it('a power lead one pin off is the first suspect after three answers, shown where it sits, saved and read back', async () => {
  const { page, file } = await diagnose(oneOff);
  await buttonFor(page, 'nothing-on-press', 'Yes').click();
  await buttonFor(page, 'standby-light', 'Yes').click();
  await buttonFor(page, 'only-pins-start', 'Yes').click();
  await expect.poll(() => firstIn(page)).toContain('A panel lead on the wrong pins');
  expect(await firstIn(page)).toContain('Power switch is shifted on PANEL');
  await page.getByText('Outlined: Power switch.').waitFor();
  const reasons = page.getByRole('region', { name: `Reasons: ${CAUSES['panel-lead-miswire']}` });
  await expect.poll(async () => plain(await reasons.textContent())).toContain('For it');
  expect(await violations(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await violations(page)).toEqual([]);

  // Undo takes the last answer back, redo gives it again.
  await page.keyboard.press('Control+Z');
  await expect
    .poll(() => buttonFor(page, 'only-pins-start', 'Yes').getAttribute('aria-pressed'))
    .toBe('false');
  await page.keyboard.press('Control+Shift+Z');
  const saved = await save(page, file);
  expect(logOf(saved)).toMatchObject([
    { kind: 'noticed', what: 'nothing-on-press', answer: 'yes' },
    { kind: 'noticed', what: 'standby-light', answer: 'yes' },
    { kind: 'noticed', what: 'only-pins-start', answer: 'yes' },
  ]);

  await workplace.kill();
  const again = await workplace.open([file]);
  await again.keyboard.press('Control+4');
  await expect.poll(() => firstIn(again), { timeout: 60_000 }).toContain('A panel lead on the wrong pins');
  await again.getByRole('tab', { name: 'Log (3)' }).click();
  await again.getByRole('button', { name: 'Take line 3 out' }).waitFor();
});

/** What a trial gives on a machine with a certain fault: the result that comes most often. */
function resultUnder(title: string, faultId: string): string {
  const trial = trialsOf(wired).find((each) => plain(trialWordsIn(wired, each).title) === title);
  const fault = faultsAsWritten(wired).find(({ id }) => id === faultId);
  if (!trial || !fault) throw new Error(`No trial “${title}”, or no fault ${faultId}`);
  const chanceOf = (result: (typeof trial.results)[number]) =>
    predict(fault).reduce(
      (sum, outcome) => sum + outcome.chance * (trial.chances([fault], outcome)[result] ?? 0),
      0,
    );
  const [most] = [...trial.results].sort((a, b) => chanceOf(b) - chanceOf(a));
  return resultName(most ?? 'same');
}

it('a stuck reset button is found by two trials, and what a cure proves is said', async () => {
  const { page, file } = await diagnose(null);
  for (const id of ['no-picture', 'no-beep', 'kept-in-reset'] as const)
    await buttonFor(page, id, 'Yes').click();
  for (let made = 0; made < 2; made++) {
    await reckoned(page);
    const trial = trialIn(page).getByRole('heading', { level: 3 }).first();
    const title = plain(await trial.textContent());
    const result = resultUnder(title, 'reset-switch/switch/stuck');
    await trialIn(page).getByRole('list', { name: 'Results' }).getByRole('button', { name: result }).click();
    await expect.poll(async () => plain(await trial.textContent())).not.toBe(title);
  }
  await reckoned(page);
  await expect.poll(() => firstIn(page)).toContain('The button of Reset switch stays pressed');
  const chances = (await suspectsIn(page).allTextContents()).map((text) => Number.parseInt(text, 10) || 0);
  expect(chances[0]).toBeGreaterThan(2 * (chances[1] ?? 0));
  const log = logOf(await save(page, file));
  expect(log.filter(({ kind }) => kind === 'tried')).toHaveLength(2);
});

it('smoke stops everything: no trial any more, and what not to plug in again', async () => {
  const { page } = await diagnose(null);
  await buttonFor(page, 'smoke', 'Yes').click();
  const stop = page.getByRole('alert', { name: 'Stop' });
  await stop.waitFor();
  expect(plain(await stop.textContent())).toMatch(/Stop\. Pull the mains plug.*Do not plug in again/);
  expect(await trialIn(page).getByRole('list', { name: 'Results' }).count()).toBe(0);
  expect(await page.getByRole('grid', { name: 'Look first' }).count()).toBe(0);
  expect(await violations(page)).toEqual([]);
  await page.keyboard.press('F9');
  const large = page.getByRole('dialog', { name: /^Stop/ });
  await large.waitFor();
  expect(await large.getByRole('button').allTextContents()).toEqual(['Leave']);
  await page.keyboard.press('Escape');
  await buttonFor(page, 'smoke', 'Not looked').click();
  await stop.waitFor({ state: 'detached' });
});

it('a spark stops everything at once, before anything is worked out', async () => {
  const page = await workplace.open([demoFile('wired.build.json')]);
  await page.getByRole('main', { name: 'Board' }).getByRole('img').waitFor();
  // A worker that never answers.
  await page.evaluate(() => {
    window.Worker = class extends EventTarget {
      postMessage() {}
      terminate() {}
    } as unknown as typeof Worker;
  });
  await page.keyboard.press('Control+4');
  await buttonFor(page, 'spark', 'Yes').click();
  await page.getByRole('alert', { name: 'Stop' }).waitFor();
  expect(await page.locator('main').getAttribute('aria-busy')).toBe('true');
  await page.keyboard.press('F9');
  await page.getByRole('dialog', { name: /^Stop/ }).waitFor();
});

it('is worked by keyboard alone: questions, suspects, trials, the log, and in large letters', async () => {
  const { page, file } = await diagnose(null);
  const all = page.getByRole('grid', { name: 'All questions' });
  await tabTo(page, page.getByRole('searchbox', { name: 'Search the questions' }));
  await page.keyboard.type('nothing at all');
  await tabTo(page, all);
  await arrowTo(page, all.getByRole('row', { name: new RegExp(asked('nothing-on-press').slice(0, 20)) }));
  await page.keyboard.press('y');
  await expect
    .poll(() => buttonFor(page, 'nothing-on-press', 'Yes').getAttribute('aria-pressed'))
    .toBe('true');
  await page.keyboard.press('Delete');
  await expect
    .poll(() => buttonFor(page, 'nothing-on-press', 'Yes').getAttribute('aria-pressed'))
    .toBe('false');
  await page.keyboard.press('y');

  // Another suspect by the arrows: its reasons stand below.
  await tabTo(page, page.getByRole('listbox', { name: /^Suspects/ }));
  await page.keyboard.press('ArrowDown');
  const second = plain(await suspectsIn(page).nth(1).textContent());
  await expect.poll(() => suspectsIn(page).nth(1).getAttribute('aria-selected')).toBe('true');
  const heading = page.getByRole('region', { name: /^Reasons/ }).getByRole('heading', { level: 3 });
  expect(second).toContain(plain(await heading.textContent()).split(',')[0] ?? '');

  // This bench meets it more often than is usual: the suspect stays shown, its row and the strip say so.
  const often = page.getByRole('button', { name: /How often here/ });
  const weighed = suspectsIn(page).filter({ hasText: 'more often here' });
  await tabTo(page, often);
  await page.keyboard.press('Enter');
  await page.getByRole('option', { name: 'as usual' }).waitFor();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Enter');
  await weighed.waitFor();
  expect(second).toContain(plain(await heading.textContent()).split(',')[0] ?? '');
  await page
    .getByText(/^Done: Count as met more often: /)
    .first()
    .waitFor();
  await reckoned(page);
  await page.keyboard.press('Control+Z');
  await weighed.waitFor({ state: 'detached' });
  await page.keyboard.press('Control+Shift+Z');
  await weighed.waitFor();
  await reckoned(page);

  // Another trial by its button: the card begins at its head, and has the focus.
  const other = page
    .getByRole('region', { name: 'Other trials' })
    .getByRole('listitem')
    .getByRole('button')
    .first();
  const title = plain(await other.textContent());
  await tabTo(page, other);
  await page.keyboard.press('Enter');
  const card = trialIn(page).getByRole('region', { name: title });
  await expect.poll(() => card.evaluate((element) => element === document.activeElement)).toBe(true);

  // In large letters: questions until there is a trial, its first result, and back.
  await page.keyboard.press('F9');
  const large = page.getByRole('dialog');
  const question = large.getByRole('region', { name: 'Question' });
  for (let times = 0; times < 40; times++) {
    if ((await large.getByRole('region', { name: 'Trial' }).count()) > 0) break;
    await question.waitFor();
    await page.keyboard.press('s');
  }
  await large.getByRole('region', { name: 'Trial' }).waitFor();
  await page.keyboard.press('1');
  await page.keyboard.press('Escape');
  await large.waitFor({ state: 'detached' });

  // A remark in the log, and one line taken out again.
  await tabTo(page, page.getByRole('tab', { name: 'Next trial' }));
  await page.keyboard.press('ArrowRight');
  await page.getByRole('tab', { name: 'Log (2)', selected: true }).waitFor();
  await tabTo(page, page.getByRole('textbox', { name: /^A remark/ }));
  await page.keyboard.type('Bought used.');
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByRole('button', { name: 'Take line 2 out' }));
  await page.keyboard.press('Enter');
  await page.getByRole('tab', { name: 'Log (2)' }).waitFor();
  const saved = await save(page, file);
  expect(saved.priors).toMatchObject([{ factor: 3 }]);
  expect(logOf(saved)).toMatchObject([
    { kind: 'noticed', what: 'nothing-on-press', answer: 'yes' },
    { kind: 'remark', text: 'Bought used.' },
  ]);
});

it('the pages of the trouble sheet are shown from the area, and nothing is in the way of assistive technology', async () => {
  const { page } = await diagnose(null);
  await buttonFor(page, 'nothing-on-press', 'Yes').click();
  await trialIn(page).getByRole('button', { name: 'Print…' }).click();
  const dialog = page.getByRole('dialog', { name: 'Print the trouble sheet' });
  const sheet = dialog.getByRole('img', { name: /of the trouble sheet/ });
  await sheet.waitFor({ timeout: 60_000 });
  expect(await violations(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'detached' });
});
