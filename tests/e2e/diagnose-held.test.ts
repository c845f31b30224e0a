import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { RISK_WORDS } from '../../boards/diagnosis/trials/words';
import type { Build } from '../../boards/document/build';
import { serialize } from '../../boards/document/serialize';
import { demo } from '../boards/findings/demo';
import { plain } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

async function diagnose(build: Build): Promise<Page> {
  const file = join(workplace.home, 'bench.build.json');
  writeFileSync(file, serialize(build));
  const page = await workplace.open([file]);
  await page.keyboard.press('Control+4');
  await page.locator('.diagnose-area:not(:has([aria-busy="true"]))').waitFor({ timeout: 60_000 });
  return page;
}

const toDo = (page: Page) => page.getByRole('complementary', { name: 'What to do' });

it('a wiring that is a danger has the reason over the next trial, which needs no mains', async () => {
  const page = await diagnose(demo('eight-slips'));
  const held = toDo(page).getByRole('note', { name: 'Held back' });
  await held.waitFor();
  expect(plain(await held.textContent())).toBe(RISK_WORDS.danger);
  const head = toDo(page).getByText(/^(Most telling for its work|Chosen by you)/);
  expect(plain(await head.textContent())).toMatch(/mains off$/);
});

it('a look that found something burnt stops everything', async () => {
  const build: Build = {
    ...demo('wired'),
    trouble: { log: [{ kind: 'tried', trial: 'look-board', result: 'burnt' }] },
  };
  const page = await diagnose(build);
  const stop = page.getByRole('alert', { name: 'Stop' });
  await stop.waitFor();
  expect(plain(await stop.textContent())).toMatch(/Do not plug in again: the part that is burnt/);
  expect(await toDo(page).getByRole('list', { name: 'Results' }).count()).toBe(0);
});
