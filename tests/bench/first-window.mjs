import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import { findBrowser } from '../../electron/start/find-browser.mjs';

/**
 * How long it takes from navigation to a window that can be worked with, as a ratio to the first circle of a
 * bare page of the same React and the same drawing library, in the same run, in turn: to the start screen, and
 * with a file to open, to the demo build drawn and its leads listed. Each time in a browser that has kept
 * nothing. Aim: 1.5.
 */
const ROUNDS = 11;
const AIM = 1.5;
const DEMO = fileURLToPath(new URL('../../boards/library/demo/wired.build.json', import.meta.url));
const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const data = mkdtempSync(`${tmpdir()}/lw-bench-`);
process.env.LEADWRIGHT_DATA = data;

const { openBuiltDoor } = await import('../../dist/browser-door.mjs');
const bare = await serveBarePage();
const browser = await chromium.launch({ executablePath: findBrowser() ?? '', args: ['--disable-gpu'] });
try {
  const times = { bare: [], start: [], demo: [] };
  // The first round warms the browser up and is not counted.
  for (let round = 0; round <= ROUNDS; round++) {
    times.bare.push(await untilUsable(bare.address, { painted: true }));
    times.start.push(await oursUntilUsable([], { listed: '.start-doings button' }));
    times.demo.push(await oursUntilUsable([DEMO], { listed: '[role="row"][aria-label]', painted: true }));
  }
  const [plain, start, demo] = [times.bare, times.start, times.demo].map((all) => median(all.slice(1)));
  console.log(
    `First usable window, median of ${ROUNDS}, against ${plain.toFixed(0)} ms of a bare page (aim ${AIM}): ` +
      `start screen ${start.toFixed(0)} ms, ${(start / plain).toFixed(2)} times; ` +
      `demo build drawn and listed ${demo.toFixed(0)} ms, ${(demo / plain).toFixed(2)} times`,
  );
} finally {
  await browser.close();
  bare.close();
  rmSync(data, { recursive: true, force: true });
}

async function oursUntilUsable(files, signs) {
  const door = await openBuiltDoor(files);
  const after = await untilUsable(door.startUrl(), signs);
  door.close();
  await door.ended;
  return after;
}

/** Milliseconds from navigation until something is listed, or painted in the middle of a canvas, or both. */
async function untilUsable(address, { listed = 'body', painted = false }) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await context.newPage();
  await page.addInitScript(
    ([listed, painted]) => {
      const isPainted = (canvas) => {
        const { width, height } = canvas;
        return width > 0 && canvas.getContext('2d').getImageData(width / 2, height / 2, 1, 1).data[3] > 0;
      };
      const look = () => {
        const there = document.querySelector(listed) !== null;
        if (there && (!painted || [...document.querySelectorAll('canvas')].some(isPainted)))
          globalThis.usableAfter = performance.now();
        else requestAnimationFrame(look);
      };
      requestAnimationFrame(look);
    },
    [listed, painted],
  );
  await page.goto(address);
  await page.waitForFunction(() => globalThis.usableAfter !== undefined);
  const after = await page.evaluate(() => globalThis.usableAfter);
  await context.close();
  return after;
}

/** The bare page, built and served from memory like ours. */
async function serveBarePage() {
  const { output } = await build({
    configFile: false,
    root: here('bare-window'),
    logLevel: 'error',
    plugins: [react()],
    build: {
      write: false,
      modulePreload: { polyfill: false },
      chunkSizeWarningLimit: 2_000,
      assetsInlineLimit: 0,
    },
  });
  const files = new Map(
    output.map((file) => [`/${file.fileName}`, 'code' in file ? file.code : file.source]),
  );
  const types = { html: 'text/html', js: 'text/javascript', svg: 'image/svg+xml' };
  const server = createServer((request, response) => {
    const path = request.url === '/' ? '/index.html' : request.url;
    const type = types[path.split('.').at(-1)] ?? 'application/octet-stream';
    response.writeHead(files.has(path) ? 200 : 404, { 'Content-Type': type, 'Cache-Control': 'no-store' });
    response.end(files.get(path));
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { address: `http://127.0.0.1:${server.address().port}/`, close: () => server.close() };
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}
