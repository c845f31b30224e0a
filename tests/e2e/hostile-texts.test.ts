import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { BuildZ } from '../../boards/document/build';
import { serialize } from '../../boards/document/serialize';
import { NameZ } from '../../boards/document/text';
import { withEveryText } from '../strangers/every-text';
import { HOSTILE_TEXTS } from '../strangers/hostile-texts';
import { wholeBuild } from '../strangers/whole-build';
import { walkThrough } from './walk-through';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

/** What a file may hold; the others are refused when it is opened. */
const TEXTS = HOSTILE_TEXTS.filter((text) => NameZ.safeParse(text).success);
/** How often the build is opened, each text in other fields each time. */
const OPENINGS = [0, 1, 2];

/** Every text in turn in every field that holds words: names, prints, notes, sources, answers, places, ways. */
function hostileBuild(opening: number): string {
  const from = Math.floor((opening * TEXTS.length) / OPENINGS.length);
  let fields = 0;
  const build = withEveryText(BuildZ, wholeBuild(), (place) => {
    fields += 1;
    return TEXTS[(from + place) % TEXTS.length] ?? '';
  });
  expect(fields).toBeGreaterThan(2 * TEXTS.length);
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

/** Which of the texts stand on the page for somebody to read: as text, in a field, or as the name of something. */
async function shownOf(page: Page, texts: readonly string[]): Promise<readonly string[]> {
  return page.evaluate((all) => {
    const words = [document.body.textContent ?? ''];
    for (const each of document.querySelectorAll('input, textarea, [aria-label], [title]'))
      words.push(
        Reflect.get(each, 'value') ?? '',
        each.getAttribute('aria-label') ?? '',
        each.getAttribute('title') ?? '',
      );
    const shown = words.join('\n').replaceAll('\u00a0', ' ');
    return all.filter((text) => shown.includes(text.replaceAll('\u00a0', ' ')));
  }, texts);
}

/** Every text that could be read somewhere, in any opening. */
const shown = new Set<string>();

it.each(OPENINGS)(
  'every hostile text that a file may hold is text in every area, and every dialog that a menu or an area opens (opening %i)',
  async (opening) => {
    const file = join(workplace.home, 'hostile.build.json');
    writeFileSync(file, hostileBuild(opening));
    const page = await workplace.open([file]);
    page.on('dialog', () => expect.unreachable('A text has opened a dialog'));
    const dialogs = await walkThrough(page, async (where) => {
      expect(await madeByTexts(page), where).toEqual(NOTHING);
      for (const text of await shownOf(page, TEXTS)) shown.add(text);
    });
    expect(dialogs.length).toBeGreaterThan(20);
  },
  300_000,
);

it('and of a hundred of them eighty-five stood somewhere in the window to be read, in one opening or another', () => {
  expect(shown.size).toBeGreaterThan(0.85 * TEXTS.length);
});
