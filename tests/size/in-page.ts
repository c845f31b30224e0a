import { readFileSync } from 'node:fs';
import type { BrowserContext, Page } from 'playwright-core';

/** What the page notes about itself, before anything of it is loaded. */
interface Noted {
  /** Milliseconds from navigation until board, leads and findings are all there; undefined until then. */
  paintedAfter?: number;
  /** The longest time between two beats of a clock that beats every few milliseconds. */
  longestGapMs: number;
}

declare global {
  var noted: Noted;
  var saidAfter: Promise<number>;
}

const BEAT_MS = 5;

/** Sets the page to note for how long it ever answered nothing. */
export async function watchClock(context: BrowserContext): Promise<void> {
  await context.addInitScript((beatMs) => {
    globalThis.noted = { longestGapMs: 0 };
    let before = performance.now();
    setInterval(() => {
      const now = performance.now();
      globalThis.noted.longestGapMs = Math.max(globalThis.noted.longestGapMs, now - before);
      before = now;
    }, beatMs);
  }, BEAT_MS);
}

/** Sets the page to note when it was first painted as a whole. To look at that often costs it some time. */
export async function watchPainting(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    globalThis.noted = { longestGapMs: 0 };
    const isPainted = (canvas: HTMLCanvasElement) => {
      const { width, height } = canvas;
      if (width === 0 || height === 0) return false;
      const row = canvas.getContext('2d')?.getImageData(0, height >> 1, width, 1);
      return row?.data.some((value) => value > 0) ?? false;
    };
    const look = () => {
      const listed =
        document.querySelector('[role="row"][aria-label]') && document.querySelector('.findings');
      if (listed && [...document.querySelectorAll('canvas')].some(isPainted))
        globalThis.noted.paintedAfter = performance.now();
      else requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
}

/** Milliseconds from navigation to the first full picture. */
export async function paintedAfterMs(page: Page): Promise<number> {
  const found = await page.waitForFunction(() => globalThis.noted.paintedAfter);
  return Number(await found.jsonValue());
}

/**
 * Milliseconds of each frame in which the wheel moves the picture: from the turn of the wheel until the frame
 * after it has been painted, so the wait for the screen is in it.
 */
export function framesMs(page: Page, how: 'pan' | 'zoom', count: number): Promise<readonly number[]> {
  return page.evaluate(
    async ([zooms, frames]) => {
      const board = document.querySelector('.board-canvas');
      const box = board?.getBoundingClientRect();
      if (!board || !box) throw new Error('There is no board on the page');
      const painted = () =>
        new Promise<void>((resolve) =>
          requestAnimationFrame(() => {
            for (const canvas of board.querySelectorAll('canvas'))
              canvas.getContext('2d')?.getImageData(0, 0, 1, 1);
            resolve();
          }),
        );
      const times: number[] = [];
      for (let frame = 0; frame < frames; frame++) {
        const began = performance.now();
        board.dispatchEvent(
          new WheelEvent('wheel', {
            deltaY: zooms ? (frame % 20 < 10 ? -60 : 60) : frame % 2 ? 40 : -35,
            deltaX: zooms ? 0 : (frame % 3) * 10 - 10,
            ctrlKey: zooms,
            clientX: box.x + box.width / 2,
            clientY: box.y + box.height / 2,
            bubbles: true,
            cancelable: true,
          }),
        );
        await painted();
        times.push(performance.now() - began);
      }
      return times;
    },
    [how === 'zoom', count] as const,
  );
}

/** Milliseconds of each move of the pointer over the board, all that the move brings about at once with it. */
export function hitsMs(page: Page, count: number): Promise<readonly number[]> {
  return page.evaluate((moves) => {
    const board = document.querySelector('.board-canvas');
    const box = board?.getBoundingClientRect();
    if (!board || !box) throw new Error('There is no board on the page');
    return Array.from({ length: moves }, (_, at) => {
      const clientX = box.x + (box.width * ((at * 37) % 101)) / 101;
      const clientY = box.y + (box.height * ((at * 53) % 97)) / 97;
      const began = performance.now();
      board.dispatchEvent(new PointerEvent('pointermove', { clientX, clientY, bubbles: true }));
      return performance.now() - began;
    });
  }, count);
}

/**
 * Milliseconds from the press of a key until something on the page reads otherwise than it did, and is painted.
 *
 * @param selector what reads otherwise then
 */
export async function untilSaidMs(page: Page, key: string, selector: string): Promise<number> {
  await page.evaluate((where) => {
    const text = () => [...document.querySelectorAll(where)].map((each) => each.textContent).join(' ');
    globalThis.saidAfter = new Promise((resolve) => {
      // The window's own listener may have done it all before this one is called.
      const before = text();
      const begin = ({ timeStamp: began }: Event) => {
        const look = () => {
          if (text() === before) requestAnimationFrame(look);
          // What was changed in one frame has been painted in the next.
          else requestAnimationFrame(() => resolve(performance.now() - began));
        };
        requestAnimationFrame(look);
      };
      addEventListener('keydown', begin, { capture: true, once: true });
    });
  }, selector);
  await page.keyboard.press(key);
  return page.evaluate(() => globalThis.saidAfter);
}

/** Megabytes that the processes of all pages hold in memory, shared parts counted whole. */
export async function pagesMb(page: Page): Promise<number> {
  const browser = page.context().browser();
  if (browser === null) return Number.NaN;
  const devtools = await browser.newBrowserCDPSession();
  const { processInfo } = await devtools.send('SystemInfo.getProcessInfo');
  await devtools.detach();
  const renderers = processInfo.filter(({ type }) => type === 'renderer');
  const resident = renderers.map(({ id }) => {
    const [, kilobytes] = /^VmRSS:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${id}/status`, 'utf8')) ?? [];
    return Number(kilobytes) / 1_000;
  });
  return Math.max(...resident);
}
