import { imageSize } from 'image-size';
import { beforeAll, describe, expect, test } from 'vitest';
import type { PaperFormat, Print } from '../../../boards/handover/order';
import { type PinoutOptions, PLAIN_OPTIONS } from '../../../boards/handover/pinout/options';
import type { PaperKit } from '../../../electron/paper/kit';
import { makePaper, type PaperOrder } from '../../../electron/paper/make-paper';
import { boardWith } from '../../boards/handover/papers';
import { anywhere } from '../../boards/library/published';
import { kitFromPackages } from './kit';

const DAY = new Date(Date.UTC(2026, 10, 26));
const BOARD = boardWith([anywhere('panel-2x5'), { ...anywhere('main-power-24'), id: 'main' }]);
let kit: PaperKit;
beforeAll(async () => {
  kit = await kitFromPackages();
});

function pinout(options: Partial<PinoutOptions> = {}): Print {
  return { kind: 'pinout', options: { ...PLAIN_OPTIONS, ...options } };
}

function make(format: PaperFormat, changed: Partial<PaperOrder> = {}) {
  const order = { document: BOARD, print: pinout(), format, page: null, scale: 1, ...changed };
  return makePaper(kit, order, DAY);
}

describe('PNG', () => {
  test.each([
    // 210 by 297 mm at 96 pixels an inch of 25.4 mm, and at twice that.
    [1, 'a4', 794, 1123],
    [2, 'a4', 1587, 2244],
    // 8.5 by 11 in.
    [1, 'letter', 816, 1056],
  ] as const)(
    'at scale %d a page of %s has the pixels that its size asks for',
    async (scale, paper, width, height) => {
      const made = await make('png', { scale, page: 1, print: pinout({ paper }) });
      if (!made.ok) throw new Error(made.problem.code);
      expect(imageSize(made.value.bytes)).toMatchObject({ type: 'png', width, height });
      expect(made.value.pixels).toEqual({ widthPx: width, heightPx: height });
      expect(made.value.pages).toBe(1);
    },
  );

  test('more pixels than the memory takes are refused by number, before any is drawn', async () => {
    const made = await make('png', { scale: 8 });
    expect(made).toMatchObject({ ok: false, problem: { code: 'too-many-pixels', limitPx: 40_000_000 } });
  });
});

describe('SVG', () => {
  test('holds the fonts it uses, and asks for nothing from anywhere', async () => {
    const made = await make('svg');
    if (!made.ok) throw new Error(made.problem.code);
    const svg = Buffer.from(made.value.bytes).toString('utf8');
    expect(svg.match(/@font-face/g)).toHaveLength(3);
    const links = svg.match(/(?:href|src|url)\s*[=(]\s*(?:&quot;|")?[^&")]*/g) ?? [];
    expect(links.length).toBeGreaterThanOrEqual(3);
    for (const link of links) expect(link).toMatch(/url\(&quot;data:font\/(?:woff|ttf);base64,/);
    expect(svg).not.toMatch(/<(?:image|use|script|foreignObject)/);
  });

  test('a page that is not there is refused by number', async () => {
    expect(await make('svg', { page: 7 })).toMatchObject({
      ok: false,
      problem: { code: 'no-such-page', page: 7 },
    });
  });
});
