import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, it } from 'vitest';
import { serialize } from '../../boards/document/serialize';
import { jpegHead, lyingPng, plainPixels, pngOf } from '../boards/pinout/photo/picture-files';
import { buildIn } from './bench-work';
import { dropOn, openFile, saveAs } from './files';
import {
  choosePhoto,
  openAtPhoto,
  openPhotoWindow,
  photoStatus,
  photoWindow,
  SLOW,
  stageIn,
} from './photo-hands';
import { plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');
let page: Page;

beforeEach(async () => {
  // Larger than a sheet keeps, so that it is scaled down on the way.
  page = await openAtPhoto(workplace, plainPixels(2_400, 1_800));
});

const dialog = () => photoWindow(page);
const stage = () => stageIn(page);
const status = () => photoStatus(page);
const choose = (file: string) => choosePhoto(page, join(workplace.home, file));

describe('what a camera writes beside the pixels', () => {
  it('is not kept: no Exif, no place, no profile, and the picture stands upright', async () => {
    // A JPEG as the browser packs it, with an Exif block put in: held a quarter to the left, and where on the globe.
    const bytes = await page.evaluate(async () => {
      const canvas = new OffscreenCanvas(400, 300);
      const pen = canvas.getContext('2d');
      if (!pen) throw new Error('No pen');
      pen.fillStyle = '#ffffff';
      pen.fillRect(0, 0, 400, 300);
      pen.fillStyle = '#ff0000';
      pen.fillRect(0, 0, 40, 40);
      return [...new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer())];
    });
    const whole = Buffer.from(bytes);
    const segments = exifSegmentOf(6);
    writeFileSync(
      join(workplace.home, 'held.jpg'),
      Buffer.concat([whole.subarray(0, 2), segments, whole.subarray(2)]),
    );
    await choose('held.jpg');
    await stage().waitFor();
    await page.keyboard.press('Escape');
    await saveAs(page, 'kept.build.json');
    const [kept] = buildIn(join(workplace.home, 'kept.build.json')).board.photos ?? [];
    expect(kept).toMatchObject({ widthPx: 300, heightPx: 400 });
    const stored = Buffer.from(kept?.data ?? '', 'base64');
    for (const tag of ['Exif', 'GPS', 'http://ns.adobe.com', 'ICC_PROFILE', '48.2082', 'xmp'])
      expect(stored.includes(tag), tag).toBe(false);
    expect(readFileSync(join(workplace.home, 'held.jpg')).includes('GPS 48.2082')).toBe(true);
  });
});

function exifSegmentOf(orientation: number): Buffer {
  const head = jpegHead(16, 16, orientation);
  const at = head.indexOf(Buffer.from([0xff, 0xe1]));
  return head.subarray(at, at + 2 + head.readUInt16BE(at + 2));
}

describe('a photo that is dropped on the window or pasted', () => {
  it('is taken as another photo, also while one is being worked on', async () => {
    await dropOn(page, [join(workplace.home, 'header.png')]);
    await stage().waitFor();
    writeFileSync(join(workplace.home, 'second.png'), pngOf(plainPixels(400, 300)));
    await dropOn(page, [join(workplace.home, 'second.png')]);
    await dialog()
      .getByRole('button', { name: /^second Photo|Photo second/ })
      .waitFor();
    await page.evaluate(async () => {
      const canvas = new OffscreenCanvas(60, 50);
      canvas.getContext('2d')?.fillRect(0, 0, 30, 50);
      const data = new DataTransfer();
      const webp = await canvas.convertToBlob({ type: 'image/webp' });
      data.items.add(new File([webp], 'pasted.webp', { type: 'image/webp' }));
      window.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, cancelable: true }));
    });
    await dialog()
      .getByRole('button', { name: /pasted/ })
      .first()
      .waitFor();
    // Whatever had the focus may be gone by now: Escape closes the window all the same.
    await page.evaluate(() => document.activeElement instanceof HTMLElement && document.activeElement.blur());
    await page.keyboard.press('Escape');
    await dialog().waitFor({ state: 'detached' });
    await saveAs(page, 'three.build.json');
    const photos = buildIn(join(workplace.home, 'three.build.json')).board.photos;
    expect(photos?.map(({ title }) => title)).toEqual(['header', 'second', 'pasted']);
    expect(photos?.map(({ widthPx, heightPx }) => [widthPx, heightPx])).toEqual([
      [2_000, 1_500],
      [400, 300],
      [60, 50],
    ]);
  });
});

describe('a photo that comes in a file', () => {
  it('is looked at like any other: one that is none, or lies about its size, is told and not decoded', async () => {
    const { board, ...rest } = buildIn(join(workplace.home, 'bare.build.json'));
    const photoOf = (title: string, bytes: Uint8Array) => ({
      id: title,
      title,
      type: 'image/png' as const,
      widthPx: 400,
      heightPx: 300,
      data: Buffer.from(bytes).toString('base64'),
      points: [],
    });
    const photos = [
      photoOf('huge', lyingPng([20_000, 20_000], [16, 16])),
      photoOf('script', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>')),
      photoOf('lying', pngOf(plainPixels(40, 30))),
    ];
    writeFileSync(
      join(workplace.home, 'foreign.build.json'),
      serialize({ ...rest, board: { ...board, photos } }),
    );
    await page.keyboard.press('Escape');
    await openFile(page, 'foreign.build.json');
    await expect.poll(() => stateOf(page)).toBe('saved in foreign.build.json');
    await openPhotoWindow(page);
    const refusal = dialog().getByRole('status');
    await expect
      .poll(async () => plain(await refusal.textContent()), SLOW)
      .toMatch(/^“lying” cannot be used as a photo.*says it has 400 × 300 pixels, and it has 40 × 30 pixels/);
    for (const [title, words] of [
      ['huge', '20,000 × 20,000 pixels: 400 megapixels'],
      ['script', 'It is an SVG'],
    ] as const) {
      await dialog().getByRole('button', { name: /Photo/ }).first().click();
      await page.getByRole('option', { name: title }).click();
      await expect.poll(async () => plain(await refusal.textContent()), SLOW).toContain(words);
    }
  });
});

describe('what is no photo', () => {
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" width="400" height="300"><rect width="9" height="9"/></svg>';

  it('is told in words, and nothing is lost', async () => {
    const cases: readonly (readonly [string, Uint8Array, string])[] = [
      ['drawing.png', Buffer.from(svg), 'It is an SVG: a drawing, not a photo, whatever its name says.'],
      [
        'page.jpg',
        Buffer.from('<!doctype html><html><body>pins</body></html>'),
        'It is a web page and not the picture on it.',
      ],
      ['list.png', Buffer.from('1 PLED+\n2 PWR\n'), 'It is not a picture but text.'],
      [
        'cut.png',
        pngOf(plainPixels(400, 300)).subarray(0, 900),
        'It begins as a PNG and is cut off before its end.',
      ],
      [
        'huge.png',
        lyingPng([20_000, 20_000], [16, 16]),
        'It says it has 20,000 × 20,000 pixels: 400 megapixels.',
      ],
      ['lying.png', lyingPng([400, 300], [200, 100]), 'It begins as a PNG, but what follows is damaged.'],
      ['hollow.jpg', jpegHead(400, 300), 'It begins as a JPEG, but what follows is damaged.'],
      ['empty.png', Buffer.alloc(0), 'There is nothing in it.'],
    ];
    for (const [name, bytes, words] of cases) {
      writeFileSync(join(workplace.home, name), bytes);
      await choose(name);
      await expect.poll(status, { ...SLOW, message: name }).toContain(`“${name}” cannot be used as a photo`);
      expect(await status(), name).toContain(words);
    }
    // After all of them the next photo is taken as if nothing had been.
    await choose('header.png');
    await stage().waitFor();
    await page.keyboard.press('Escape');
    await saveAs(page, 'after.build.json');
    expect(buildIn(join(workplace.home, 'after.build.json')).board.photos).toHaveLength(1);
  });
});
