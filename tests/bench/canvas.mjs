/**
 * Pans a board of 10,000 pins in the window's own canvas and, drawn by the same functions, on one
 * plain canvas, and prints what a frame costs in each. The aim is a ratio of at most 2.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { chromium } from 'playwright-core';
import { build } from 'vite';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const PINS = 10_000;
const AIM = 2;
/** How much nearer than the whole board. */
const ZOOMS = [1, 3, 8];

const [bundle] = [
  await build({
    configFile: false,
    root: here('../..'),
    logLevel: 'error',
    plugins: [react()],
    define: { 'process.env.NODE_ENV': '"production"' },
    build: {
      write: false,
      minify: false,
      lib: { entry: here('./canvas-page.tsx'), formats: ['iife'], name: 'canvasBench', cssFileName: 'bench' },
    },
  }),
].flat();
const text = (ending) =>
  bundle.output
    .filter(({ fileName }) => fileName.endsWith(ending))
    .map((file) => ('code' in file ? file.code : String(file.source)))
    .join('\n');

const browser = await chromium.launch({
  executablePath: process.env.LEADWRIGHT_BROWSER || '/usr/bin/chromium',
  args: ['--disable-gpu'],
});
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  const theme = readFileSync(here('../../renderer/look/theme.css'), 'utf8');
  await page.setContent(
    `<style>${theme}${text('.css')} #host { width: 1280px; height: 800px }</style><div id="host"></div>`,
  );
  await page.addScriptTag({ content: text('.js') });
  for (const zoom of ZOOMS) {
    const { plain, canvas } = await page.evaluate(
      ([pins, zoom]) => globalThis.runCanvasBench(pins, zoom),
      [PINS, zoom],
    );
    const ratio = canvas / plain;
    console.log(
      `canvas: ${PINS} pins, ${zoom} × the whole board: ${canvas.toFixed(1)} ms a frame, ` +
        `plain ${plain.toFixed(1)} ms, ratio ${ratio.toFixed(2)} (aim ${AIM})`,
    );
  }
} finally {
  await browser.close();
}
