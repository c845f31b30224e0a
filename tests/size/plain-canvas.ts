import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { build as bundle } from 'vite';
import { inRoot } from '../../electron/start/place.mjs';

/** The page that draws a build on one plain canvas, as one script. */
export async function plainCanvasScript(): Promise<string> {
  const result = await bundle({
    configFile: false,
    root: inRoot(),
    logLevel: 'error',
    publicDir: false,
    define: { 'process.env.NODE_ENV': '"production"' },
    build: {
      write: false,
      lib: { entry: inRoot('tests', 'size', 'plain-page.ts'), formats: ['iife'], name: 'plainPage' },
    },
  });
  const [made] = [result].flat();
  const chunk = made !== undefined && 'output' in made ? made.output[0] : undefined;
  if (chunk === undefined) throw new Error('The plain page was not built');
  return chunk.code;
}

/** Milliseconds from the text of a build to its picture on one plain canvas, in a page that has nothing else. */
export async function plainCanvasMs(browser: Browser, script: string, text: string): Promise<number> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  try {
    const theme = readFileSync(inRoot('renderer', 'look', 'theme.css'), 'utf8');
    await page.setContent(`<style>${theme}</style>`);
    await page.addScriptTag({ content: script });
    return await page.evaluate(
      (build) =>
        (globalThis as unknown as { drawPlain(t: string, w: number, h: number): number }).drawPlain(
          build,
          640,
          480,
        ),
      text,
    );
  } finally {
    await page.close();
  }
}
