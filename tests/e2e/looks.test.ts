import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { slips } from '../boards/library/demo-files';
import { demoFile } from './bench-work';
import { pointOnScreen } from './hands';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('all tests');
const WIDE = { width: 1280, height: 800 };
let page: Page;

beforeAll(async () => {
  copyFileSync(demoFile('eight-slips.build.json'), join(workplace.home, 'slips.build.json'));
  page = await workplace.open([join(workplace.home, 'slips.build.json')]);
  await page.getByRole('main', { name: 'Board' }).getByRole('img').waitFor();
});

interface Look {
  readonly look: string;
  readonly put: () => Promise<unknown>;
  readonly takeBack?: () => Promise<unknown>;
}

const emulate = (media: Parameters<Page['emulateMedia']>[0]) => () => page.emulateMedia(media);
const fromViewMenu = async (name: string) => {
  await page.getByRole('button', { name: 'View', exact: true }).click();
  await page.getByRole('menuitem', { name }).click();
  await page.getByRole('menu').waitFor({ state: 'detached' });
};
const resize = (width: number, height: number) => () => page.setViewportSize({ width, height });

/** 200 % text is the browser's zoom: half as many pixels each way, and the program's own large type. */
const LOOKS: readonly Look[] = [
  { look: 'light', put: emulate({ colorScheme: 'light' }) },
  { look: 'dark', put: emulate({ colorScheme: 'dark' }) },
  {
    look: 'dark by the program’s own switch',
    put: () => fromViewMenu('Dark theme'),
    takeBack: () => fromViewMenu('Theme of the system'),
  },
  {
    look: 'forced colours, light',
    put: emulate({ forcedColors: 'active' }),
    takeBack: emulate({ forcedColors: 'none' }),
  },
  {
    look: 'forced colours, dark',
    put: emulate({ forcedColors: 'active', colorScheme: 'dark' }),
    takeBack: emulate({ forcedColors: 'none', colorScheme: 'light' }),
  },
  { look: 'reduced motion', put: emulate({ reducedMotion: 'reduce' }) },
  { look: 'large type', put: () => fromViewMenu('Large type'), takeBack: () => fromViewMenu('Large type') },
  { look: 'text at 200 %', put: resize(640, 400), takeBack: resize(WIDE.width, WIDE.height) },
];

describe.each(LOOKS)('$look', ({ put, takeBack }) => {
  afterEach(async () => {
    await page.keyboard.press('Control+2');
    await takeBack?.();
  });

  it('clips nothing at the sides and lets no mark vanish', async () => {
    await put();
    await drawingFills(page);
    await page.keyboard.press('Control+0');
    expect(await clippedAtSides(page)).toEqual([]);
    expect(await faintSigns(page)).toEqual([]);
    for (const seat of slips.seats) {
      const contrast = async () => contrastAround(page, await pointOnScreen(page, slips, seat));
      await expect.poll(contrast, { message: `${seat.lead} on the drawing` }).toBeGreaterThan(3);
    }
    await page.keyboard.press('Control+1');
    await page.getByRole('main', { name: 'Document' }).waitFor();
    expect(await clippedAtSides(page)).toEqual([]);
  });
});

/** Waits until the drawing has followed its frame to a new size; only then "whole board" means this size. */
function drawingFills(page: Page): Promise<unknown> {
  return page.waitForFunction(() => {
    const [stage] = window.Konva?.stages ?? [];
    if (!stage) return false;
    const { clientWidth, clientHeight } = stage.container();
    return clientWidth === stage.width() && clientHeight === stage.height();
  });
}

/** Visible elements that reach past the side of the window, or whose text is cut off by their own box. */
function clippedAtSides(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const words = (element: Element) =>
      `${element.className} ${(element.textContent ?? '').slice(0, 60)}`.trim();
    const scrollsAside = (element: Element): boolean => {
      for (let above = element.parentElement; above; above = above.parentElement) {
        if (/auto|scroll/.test(getComputedStyle(above).overflowX) && above.scrollWidth > above.clientWidth)
          return true;
      }
      return false;
    };
    const clipped: string[] = [];
    for (const element of document.querySelectorAll<HTMLElement>('body *')) {
      // Beside each choice stands a list for the browser's own filling in of forms, which nobody sees.
      if (element.closest('svg, canvas, .aside-hidden, [data-a11y-ignore]') || !element.checkVisibility())
        continue;
      const { left, right, width } = element.getBoundingClientRect();
      if (width < 1) continue;
      if ((left < -1 || right > innerWidth + 1) && !scrollsAside(element))
        clipped.push(`outside: ${words(element)}`);
      const { overflowX, textOverflow } = getComputedStyle(element);
      const cuts = /hidden|clip/.test(overflowX) && textOverflow !== 'ellipsis';
      if (cuts && element.scrollWidth > element.clientWidth + 1) clipped.push(`cut: ${words(element)}`);
    }
    return clipped;
  });
}

/** Signs of severity that are not there to be seen: no size, or less than 3 to 1 against what is behind. */
function faintSigns(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const probe = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
    const luminance = (colour: string): number => {
      if (!probe) throw new Error('No canvas');
      probe.clearRect(0, 0, 1, 1);
      probe.fillStyle = colour;
      probe.fillRect(0, 0, 1, 1);
      const [r = 0, g = 0, b = 0] = probe.getImageData(0, 0, 1, 1).data;
      const linear = [r, g, b].map((part) => {
        const share = part / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * (linear[0] ?? 0) + 0.7152 * (linear[1] ?? 0) + 0.0722 * (linear[2] ?? 0);
    };
    const behind = (element: Element): string => {
      for (let above: Element | null = element; above; above = above.parentElement) {
        const colour = getComputedStyle(above).backgroundColor;
        if (!/, 0\)$|transparent/.test(colour)) return colour;
      }
      return getComputedStyle(document.documentElement).backgroundColor;
    };
    const signs = [...document.querySelectorAll('.findings svg.sign')];
    if (signs.length === 0) throw new Error('No findings are shown');
    return signs.flatMap((sign) => {
      const [a, b] = [luminance(getComputedStyle(sign).color), luminance(behind(sign))];
      const contrast = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
      const seen = sign.getBoundingClientRect().width >= 16 && contrast >= 3;
      return seen ? [] : [`${sign.getAttribute('class')}: ${contrast.toFixed(2)}`];
    });
  });
}

/** The strongest contrast between the board's commonest colour near a point of the drawing and any other there. */
function contrastAround(page: Page, { x, y }: { readonly x: number; readonly y: number }): Promise<number> {
  return page.evaluate(
    ({ x, y }) => {
      const side = 24;
      const joined = document.createElement('canvas');
      joined.width = joined.height = side;
      const context = joined.getContext('2d', { willReadFrequently: true });
      if (!context) throw new Error('No canvas');
      for (const layer of document.querySelectorAll('canvas')) {
        const box = layer.getBoundingClientRect();
        const scale = layer.width / box.width;
        const from = [(x - box.left - side / 2) * scale, (y - box.top - side / 2) * scale] as const;
        context.drawImage(layer, ...from, side * scale, side * scale, 0, 0, side, side);
      }
      const { data } = context.getImageData(0, 0, side, side);
      const counts = new Map<number, number>();
      const levels: number[] = [];
      for (let at = 0; at < data.length; at += 4) {
        const linear = [0, 1, 2].map((part) => {
          const share = (data[at + part] ?? 0) / 255;
          return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
        });
        const level = 0.2126 * (linear[0] ?? 0) + 0.7152 * (linear[1] ?? 0) + 0.0722 * (linear[2] ?? 0);
        levels.push(level);
        counts.set(level, (counts.get(level) ?? 0) + 1);
      }
      const [common] = [...counts].toSorted((a, b) => b[1] - a[1])[0] ?? [0];
      return Math.max(
        ...levels.map((level) => (Math.max(level, common) + 0.05) / (Math.min(level, common) + 0.05)),
      );
    },
    { x, y },
  );
}
