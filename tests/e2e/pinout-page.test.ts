import { copyFileSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { imageSize } from 'image-size';
import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, it } from 'vitest';
import { HAS_POPPLER, readByPoppler } from '../electron/paper/kit';
import { demoFile } from './bench-work';
import { tabTo } from './keys';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');
let page: Page;

beforeEach(async () => {
  const file = join(workplace.home, 'wired.build.json');
  copyFileSync(demoFile('wired.build.json'), file);
  page = await workplace.open([file]);
});

const dialog = () => page.getByRole('dialog', { name: 'Print the pinout' });
const picture = () => dialog().getByRole('img', { name: /of the pinout/ });
const where = async () =>
  (await dialog().getByRole('status').first().textContent())?.replaceAll('\u00a0', ' ');

async function choose(label: string, option: string): Promise<void> {
  await dialog().getByRole('button', { name: label }).click();
  await page.getByRole('option', { name: option }).click();
}

/** Saves through the window's own list of folders, and waits until the dialog has gone. */
async function saveAs(kind: string, name: string): Promise<Buffer> {
  await dialog()
    .getByRole('button', { name: `Save as ${kind}…` })
    .click();
  const files = page.getByRole('dialog', { name: 'Save as' });
  await files.getByRole('textbox', { name: 'Name of the file' }).fill(name);
  await files.getByRole('button', { name: 'Save', exact: true }).click();
  await dialog().waitFor({ state: 'detached' });
  return readFileSync(join(workplace.home, name));
}

/** How wide the picture of the page is once the browser has drawn it. */
async function shownWidth(): Promise<number> {
  await expect.poll(where).toMatch(/^Page \d+ of \d+$/);
  return picture().evaluate(async (image) => {
    if (!(image instanceof HTMLImageElement)) throw new Error('No picture');
    await image.decode();
    return image.naturalWidth;
  });
}

describe('The pinout is printed', () => {
  it('by keyboard alone: opened, looked at, and saved as PDF under the name that is offered', async () => {
    await page.keyboard.press('Control+P');
    await dialog().waitFor();
    expect(await shownWidth()).toBeGreaterThan(500);
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
    const pdf = readFileSync(join(workplace.home, 'tern-b2-pinout.pdf'));
    expect(pdf.subarray(0, 8).toString('latin1')).toBe('%PDF-1.7');
    if (!HAS_POPPLER) return;
    const text = await readByPoppler('pdftotext', pdf, ['-layout']);
    expect(text).toContain('Tern B2');
    expect(text).toMatch(/^\s*1 +PANEL$/m);
  });

  it('as an SVG of one connector, turned and mirrored, which a browser reads and draws', async () => {
    await page.keyboard.press('Control+P');
    await choose('Turned', 'By half');
    await dialog().getByText('Mirrored', { exact: true }).click();
    await dialog().getByRole('button', { name: 'None of the connectors' }).click();
    await dialog()
      .getByRole('option', { name: /^PANEL/ })
      .click();
    await choose('File', 'SVG');
    await expect.poll(where).toBe('Page 1 of 1');
    const svg = (await saveAs('SVG', 'panel.svg')).toString('utf8');
    // A page of nobody's: ours takes no text as markup.
    const reader = await page.context().newPage();
    const read = await reader.evaluate((text) => {
      const tree = new DOMParser().parseFromString(text, 'image/svg+xml');
      const titles = [...tree.querySelectorAll('title')].map((title) => title.textContent ?? '');
      return { titles, broken: tree.querySelector('parsererror') !== null };
    }, svg);
    await reader.close();
    expect(read.broken).toBe(false);
    expect(read.titles.filter((title) => title.startsWith('Pin '))).toHaveLength(10);
    expect(svg).toContain('Mirrored, then turned by half.');
  });

  it('as a PNG of the second page, at the size that was chosen', async () => {
    await page.keyboard.press('Control+P');
    await choose('Paper', 'Letter');
    await choose('File', 'PNG');
    await choose('Size', '96 pixels an inch');
    await dialog().getByText('Only the page that is shown').click();
    await dialog().getByRole('button', { name: 'Next page' }).click();
    await expect.poll(where).toMatch(/^Page 2 of \d+$/);
    const png = await saveAs('PNG', 'second.png');
    expect(imageSize(png)).toMatchObject({ type: 'png', width: 816, height: 1056 });
  });
});

it('The page in the browser lies as the page in the PDF: every word at its place', async () => {
  await page.keyboard.press('Control+P');
  await choose('File', 'SVG');
  await dialog().getByText('Only the page that is shown').click();
  const svg = (await saveAs('SVG', 'first.svg')).toString('utf8');
  await page.keyboard.press('Control+P');
  const pdf = await saveAs('PDF', 'all.pdf');
  if (!HAS_POPPLER) return;
  const boxes = await readByPoppler('pdftotext', pdf, ['-bbox', '-f', '1', '-l', '1']);
  const inPdf = [
    ...boxes.matchAll(/xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">([^<]+)</g),
  ]
    .map(([, left, , right, , word]) => ({ word, left: Number(left), right: Number(right) }))
    .filter(({ word }) => /^(PANEL|FAN_FRONT|CPU_12V|AUDIO|Tern|Pinout)$/.test(word ?? ''));
  expect(inPdf.length).toBeGreaterThanOrEqual(6);
  const reader = await page.context().newPage();
  await reader.setContent(`<body style="margin:0">${svg.slice(svg.indexOf('<svg'))}</body>`);
  await reader.evaluate(() => document.fonts.ready);
  const inBrowser = await reader.evaluate(() =>
    [...document.querySelectorAll('text')].flatMap((line) =>
      [...(line.textContent ?? '').matchAll(/[^\s\u00a0]+/g)].map((match) => {
        const range = document.createRange();
        const node = line.firstChild;
        if (node === null) throw new Error('Empty text');
        range.setStart(node, match.index);
        range.setEnd(node, match.index + match[0].length);
        const { left, right } = range.getBoundingClientRect();
        return { word: match[0], left, right };
      }),
    ),
  );
  // Points are 1/72 in, pixels 1/96 in.
  for (const { word, left, right } of inPdf) {
    const near = inBrowser.find(
      (other) => other.word === word && Math.abs((other.left * 72) / 96 - left) < 1.5,
    );
    expect(near ? word : `${word} at ${left}`).toBe(word);
    expect(Math.abs(((near?.right ?? 0) * 72) / 96 - right)).toBeLessThan(1.5);
  }
  await reader.close();
});

it('Nothing chosen is said, and cannot be saved; what was chosen stays when the file is not written', async () => {
  await page.keyboard.press('Control+P');
  await dialog().getByRole('button', { name: 'None of the connectors' }).click();
  await expect.poll(() => dialog().getByText('Choose at least one connector.').isVisible()).toBe(true);
  expect(await dialog().getByRole('button', { name: 'Save as PDF…' }).isDisabled()).toBe(true);
  await dialog().getByRole('option', { name: /^SPKR/ }).click();
  await dialog().getByRole('button', { name: 'Save as PDF…' }).click();
  const files = page.getByRole('dialog', { name: 'Save as' });
  await files.getByRole('textbox', { name: 'Name of the file' }).fill('speaker.txt');
  await files.getByRole('button', { name: 'Save', exact: true }).click();
  await expect.poll(() => files.getByRole('alert').textContent()).toContain('cannot be the name of a file');
  await files.getByRole('textbox', { name: 'Name of the file' }).fill('speaker.pdf');
  await files.getByRole('button', { name: 'Save', exact: true }).click();
  await dialog().waitFor({ state: 'detached' });
  expect(readFileSync(join(workplace.home, 'speaker.pdf')).length).toBeGreaterThan(5_000);
});
