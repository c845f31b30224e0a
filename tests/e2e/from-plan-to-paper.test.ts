import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { serialize } from '../../boards/document/serialize';
import { benchStepsOf } from '../../boards/handover/steps/bench-steps';
import { stepWords } from '../../boards/handover/steps/step-words';
import { planOf } from '../../boards/planner/plan';
import { wired } from '../boards/library/demo-files';
import { HAS_POPPLER, readByPoppler } from '../electron/paper/kit';
import { buildIn } from './bench-work';
import { plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');
const SOON = { timeout: 30_000 };
const BARE = { ...wired, seats: [] };

it('An unwired machine is planned, applied, stepped through and printed, by keyboard alone', async () => {
  const file = join(workplace.home, 'bare.build.json');
  writeFileSync(file, serialize(BARE));
  const page = await workplace.open([file]);
  await page.getByRole('main', { name: 'Board' }).getByRole('img').waitFor();

  // Planned beside the wiring, and taken over as a whole.
  await page.keyboard.press('Control+B');
  const panel = page.getByRole('complementary', { name: 'Best seating' });
  const applyAll = panel.getByRole('button', { name: 'Apply all' });
  await applyAll.waitFor(SOON);
  await applyAll.focus();
  await page.keyboard.press('Enter');
  await expect
    .poll(async () => plain(await panel.textContent()), SOON)
    .toContain('Your wiring is this arrangement.');
  expect(await stateOf(page)).toBe('1 unsaved change');

  // Every step of the work, in large letters, by one key.
  const planned = { ...BARE, seats: [...planOf(BARE).seats] };
  const steps = benchStepsOf(planned);
  if (!steps.ok) throw new Error('The plan of the demo has a ring');
  await page.keyboard.press('Control+5');
  await page.getByRole('main', { name: 'Step' }).waitFor();
  await page.keyboard.press('F9');
  const large = page.getByRole('dialog');
  for (const step of steps.value) {
    const title = plain(stepWords(planned, step).title);
    await expect
      .poll(async () => plain(await large.getByRole('heading', { level: 2 }).textContent()), SOON)
      .toBe(title);
    await page.keyboard.press('Space');
  }
  await large.getByText(`${steps.value.length} of ${steps.value.length} done`).waitFor();
  await page.keyboard.press('Escape');
  await large.waitFor({ state: 'detached' });

  // Kept, with seats and ticks.
  await page.keyboard.press('Control+S');
  await expect.poll(() => stateOf(page), SOON).toBe('saved in bare.build.json');
  const saved = buildIn(file);
  expect(saved.seats).toHaveLength(planned.seats.length);
  expect(saved.done).toHaveLength(steps.value.length);

  // And printed: every lead is on the paper.
  await page.keyboard.press('Control+Shift+P');
  const print = page.getByRole('dialog', { name: /^Print/ });
  await print.getByText(/^Page 1 of/).waitFor(SOON);
  await print.getByRole('button', { name: 'Save as PDF…' }).focus();
  await page.keyboard.press('Enter');
  const place = page.getByRole('dialog', { name: 'Save as' });
  await place.waitFor();
  await place.getByRole('textbox', { name: 'Name of the file' }).fill('sheet.pdf');
  await page.keyboard.press('Enter');
  await print.waitFor({ state: 'detached', ...SOON });
  if (!HAS_POPPLER) return;
  const text = (
    await readByPoppler('pdftotext', readFileSync(join(workplace.home, 'sheet.pdf')), ['-layout'])
  ).replaceAll(/\s+/g, ' ');
  for (const lead of [...planned.case.leads, ...planned.extras]) expect(text).toContain(lead.name);
});
