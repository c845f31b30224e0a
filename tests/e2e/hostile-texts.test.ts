import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { BuildZ } from '../../boards/document/build';
import { serialize } from '../../boards/document/serialize';
import { NameZ } from '../../boards/document/text';
import { wired } from '../boards/library/demo-files';
import { withEveryText } from '../strangers/every-text';
import { HOSTILE_TEXTS } from '../strangers/hostile-texts';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

/** What a file may hold; the others are refused when it is opened. */
const TEXTS = HOSTILE_TEXTS.filter((text) => NameZ.safeParse(text).success);

/** Every text in turn in every field that holds words: names, prints, notes, sources. */
function hostileBuild(): string {
  let fields = 0;
  const build = withEveryText(BuildZ, wired, (place) => {
    fields += 1;
    return TEXTS[place % TEXTS.length] ?? '';
  });
  expect(fields).toBeGreaterThan(TEXTS.length);
  return serialize(build);
}

/** What only a text that was taken for markup could have made. */
async function madeByTexts(page: Page) {
  return page.evaluate(() => ({
    ran: Reflect.get(window, 'pwned') !== undefined,
    elements: document.querySelectorAll(
      'script:not([src]), iframe, object, embed, base, math, foreignObject, [onload], [onerror], [onclick], [onfocus], [ontoggle]',
    ).length,
    links: [...document.querySelectorAll('a[href], [*|href]')].filter((link) =>
      /evil|javascript:|data:/i.test(link.getAttribute('href') ?? ''),
    ).length,
    frames: window.frames.length,
  }));
}

const NOTHING = { ran: false, elements: 0, links: 0, frames: 0 };

it('every hostile text that a file may hold is text in every area of the window', async () => {
  const file = join(workplace.home, 'hostile.build.json');
  writeFileSync(file, hostileBuild());
  const page = await workplace.open([file]);
  page.on('dialog', () => expect.unreachable('A text has opened a dialog'));
  const areas = page.getByRole('navigation', { name: 'Work areas' }).getByRole('button');
  const many = await areas.count();
  expect(many).toBeGreaterThan(2);
  for (let at = 0; at < many; at++) {
    if (!(await areas.nth(at).isEnabled())) continue;
    await areas.nth(at).click();
    await page.waitForTimeout(300);
    expect(await madeByTexts(page)).toEqual(NOTHING);
    const tabs = page.getByRole('tab');
    for (let tab = 0; tab < (await tabs.count()); tab++) {
      await tabs.nth(tab).click();
      await page.waitForTimeout(150);
      expect(await madeByTexts(page)).toEqual(NOTHING);
    }
  }
  expect(await page.locator('body').textContent()).toContain('<script>pwned=1</script>');
});
