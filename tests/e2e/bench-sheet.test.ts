import { execFileSync } from 'node:child_process';
import { copyFileSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { imageSize } from 'image-size';
import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, it } from 'vitest';
import { measureByTable } from '../../boards/drawing/measure';
import { PAPER_CAUTION } from '../../boards/handover/caution-words';
import { inRoot } from '../../electron/start/place.mjs';
import { sceneOf } from '../../renderer/canvas/scene/scene-of';
import { toScreen } from '../../renderer/canvas/view';
import { HAS_POPPLER, readByPoppler } from '../electron/paper/kit';
import { buildIn, demoFile } from './bench-work';
import { drawingOn } from './hands';
import { tabTo } from './keys';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');
let page: Page;
let file: string;

beforeEach(async () => {
  file = join(workplace.home, 'eight-slips.build.json');
  copyFileSync(demoFile('eight-slips.build.json'), file);
  page = await workplace.open([file]);
});

const dialog = () => page.getByRole('dialog', { name: /^(Print|Save a picture)/ });
const where = async () =>
  (await dialog().getByRole('status').first().textContent())?.replaceAll('\u00a0', ' ');

async function saveAs(name: string): Promise<Buffer> {
  const files = page.getByRole('dialog', { name: 'Save as' });
  await files.getByRole('textbox', { name: 'Name of the file' }).fill(name);
  await files.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText(`Saved ${name} in`).first().waitFor();
  return readFileSync(join(workplace.home, name));
}

async function doAction(label: string): Promise<void> {
  await page.keyboard.press('Control+K');
  await page.getByRole('dialog', { name: 'Search everything' }).getByRole('searchbox').fill(label);
  await page.getByRole('option', { name: label }).first().waitFor();
  await page.keyboard.press('Enter');
}

/** What the command line prints. */
function byCommandLine(args: readonly string[]): string {
  return execFileSync(process.execPath, [inRoot('dist', 'leadwright.mjs'), ...args], { encoding: 'utf8' });
}

describe('The bench sheet is printed', () => {
  it('by keyboard alone, the same bytes as from the command line', async () => {
    await page.keyboard.press('Control+Shift+P');
    await dialog().waitFor();
    await expect.poll(where).toMatch(/^Page 1 of \d+$/);
    const save = dialog().getByRole('button', { name: 'Save as PDF…' });
    await expect.poll(() => save.isEnabled()).toBe(true);
    await tabTo(page, save);
    await page.keyboard.press('Enter');
    await tabTo(
      page,
      page.getByRole('dialog', { name: 'Save as' }).getByRole('textbox', { name: 'Name of the file' }),
    );
    await page.keyboard.press('Enter');
    await dialog().waitFor({ state: 'detached' });
    const pdf = readFileSync(join(workplace.home, 'study-machine-4-bench-sheet.pdf'));
    const out = join(workplace.home, 'line.pdf');
    byCommandLine(['sheet', file, '--out', out]);
    expect(readFileSync(out).equals(pdf)).toBe(true);
  });

  it('with the danger on its first page, the cautions and a number on every page', async () => {
    await page.keyboard.press('Control+Shift+P');
    await dialog().getByRole('button', { name: 'Save as PDF…' }).click();
    const pdf = await saveAs('sheet.pdf');
    if (!HAS_POPPLER) return;
    const pages = (await readByPoppler('pdftotext', pdf, ['-layout'])).split('\f').slice(0, -1);
    expect(pages.length).toBeLessThanOrEqual(12);
    expect(pages[0]).toContain('Danger: do not connect the mains with this wiring');
    const bare = (text: string) => text.replaceAll(/\s/g, '');
    for (const [at, text] of pages.entries()) {
      expect(bare(text)).toContain(bare(PAPER_CAUTION));
      expect(bare(text)).toContain(`page${at + 1}of${pages.length}`);
    }
  });

  it('of chosen parts only; without one it says so and cannot be saved', async () => {
    await page.keyboard.press('Control+Shift+P');
    await dialog().waitFor();
    for (const part of [
      'The work, step by step',
      'The headers with their plugs',
      'What the meter has to show',
      'Every cable and its way',
    ])
      await dialog().getByText(part).click();
    await expect.poll(where).toMatch(/^Page 1 of [34]$/);
    await dialog().getByText('Every wire from part to pin').click();
    await expect.poll(() => dialog().getByText('Choose at least one part.').isVisible()).toBe(true);
    expect(await dialog().getByRole('button', { name: 'Save as PDF…' }).isDisabled()).toBe(true);
  });
});

it('The from-to list is saved as values, the same as the command line prints', async () => {
  await doAction('Save the from-to list');
  const csv = (await saveAs('list.csv')).toString('utf8');
  expect(csv).toBe(byCommandLine(['list', file, '--csv']));
  expect(csv.split('\r\n')[0]).toBe('Lead,From,Wire,Plug,Hole,Connector,Pin,Signal,Name in the manual');
});

it('A picture of the chosen header is saved as SVG and, at a chosen size, as PNG', async () => {
  await page.keyboard.press('Control+1');
  await page.getByRole('tab', { name: 'Board', exact: true }).click();
  await page.getByRole('option', { name: /^PANEL/ }).click();
  await doAction('Save a picture of this header');
  await dialog().getByRole('button', { name: 'Save as SVG…' }).click();
  const svg = (await saveAs('panel.svg')).toString('utf8');
  expect(svg.match(/<title>Pin \d+: /g)).toHaveLength(10);
  expect(svg).toContain('>green<');
  const width = Number(/<svg[^>]* width="([\d.]+)mm"/.exec(svg)?.[1]);
  await doAction('Save a picture of this header');
  await dialog().getByRole('button', { name: 'File' }).click();
  await page.getByRole('option', { name: 'PNG' }).click();
  await dialog().getByRole('button', { name: 'Size' }).click();
  await page.getByRole('option', { name: '288 pixels an inch' }).click();
  await dialog().getByRole('button', { name: 'Save as PNG…' }).click();
  const png = await saveAs('panel.png');
  expect(imageSize(png).width).toBe(Math.round((width / 25.4) * 288));
});

it('The picture of a header, drawn by Chromium, has its pins where the canvas has them', async () => {
  await page.keyboard.press('Control+1');
  await page.getByRole('tab', { name: 'Board', exact: true }).click();
  await page.getByRole('option', { name: /^PANEL/ }).click();
  await doAction('Save a picture of this header');
  await dialog().getByRole('button', { name: 'Save as SVG…' }).click();
  await saveAs('panel.svg');
  const picture = await page.context().newPage();
  await picture.goto(pathToFileURL(join(workplace.home, 'panel.svg')).href);
  const drawn = await picture.evaluate(() =>
    [...document.querySelectorAll('title')].flatMap((title) => {
      const pin = /^Pin (\d+): /.exec(title.textContent ?? '')?.[1];
      const square = title.parentElement?.querySelector('rect, path, polygon');
      if (pin === undefined || !square) return [];
      const { left, right, top, bottom } = square.getBoundingClientRect();
      return [{ pin, x: (left + right) / 2, y: (top + bottom) / 2 }];
    }),
  );
  await picture.close();
  expect(drawn).toHaveLength(10);

  await page.keyboard.press('Control+2');
  await page.getByRole('main', { name: 'Board' }).getByRole('img').waitFor();
  const build = buildIn(file);
  const { view } = await drawingOn(page);
  const block = sceneOf(build, { view: build.view, measure: measureByTable }).blocks.find(
    ({ connector }) => connector.print === 'PANEL',
  );
  const onCanvas = new Map(
    block?.pins.map(({ pin, box }) => [
      pin,
      toScreen(view, { x: box.x + box.width / 2, y: box.y + box.height / 2 }),
    ]),
  );
  // One is the other made larger: every way from pin 1 is longer by the same.
  const [first] = drawn;
  const canvasFirst = onCanvas.get(first?.pin ?? '');
  const last = drawn.find(({ pin }) => pin === '9');
  const canvasLast = onCanvas.get('9');
  if (!first || !canvasFirst || !last || !canvasLast) throw new Error('Pins 1 and 9 are not drawn');
  const larger = (canvasLast.x - canvasFirst.x) / (last.x - first.x);
  expect(larger).toBeGreaterThan(0);
  for (const { pin, x, y } of drawn) {
    const there = onCanvas.get(pin);
    expect((there?.x ?? 0) - canvasFirst.x).toBeCloseTo((x - first.x) * larger, 0);
    expect((there?.y ?? 0) - canvasFirst.y).toBeCloseTo((y - first.y) * larger, 0);
  }
});
