import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { serialize } from '../../boards/document/serialize';
import { largeBuild } from '../boards/large-build';
import { wired } from '../boards/library/demo-files';
import { saveAs } from './files';
import { stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

/** Longer than what is read on the window's own thread. */
const LONG = serialize(largeBuild(wired, 8));

it('a file so long that it is read beside the window is worked on as any other', async () => {
  expect(LONG.length).toBeGreaterThan(256 * 1024);
  const file = join(workplace.home, 'long.build.json');
  writeFileSync(file, LONG);
  const page = await workplace.open([file]);
  await expect.poll(() => stateOf(page)).toBe('saved in long.build.json');
  expect(page.workers()).toEqual([]);

  await page.getByRole('grid', { name: 'Leads' }).locator('[role="row"][aria-label]').first().click();
  await page.keyboard.press('Delete');
  await expect.poll(() => stateOf(page)).toBe('1 unsaved change');
  await page.keyboard.press('Control+Z');
  await saveAs(page, 'again.build.json');
  expect(readFileSync(join(workplace.home, 'again.build.json'), 'utf8')).toBe(LONG);
});
