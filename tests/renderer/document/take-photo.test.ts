import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readHead } from '../../../boards/pinout/photo/picture-head';
import { takePhoto } from '../../../renderer/areas/document/photo/take-photo';
import { jpegHead, jpegWithTags, plainPixels, pngOf, TAGS } from '../../boards/pinout/photo/picture-files';
import { HARMFUL_PICTURES } from '../../strangers/harmful-pictures';

/** The two things that only a browser can do: to decode a picture, and to pack one; here they are counted. */
let decodings: number;

beforeEach(() => {
  decodings = 0;
  vi.stubGlobal('createImageBitmap', async () => {
    decodings += 1;
    return { width: 400, height: 300, close: () => undefined };
  });
  vi.stubGlobal(
    'OffscreenCanvas',
    class {
      readonly width = 400;
      readonly height = 300;
      readonly getContext = () => ({ fillRect: () => undefined, drawImage: () => undefined });
      // A packer that writes beside the pixels whatever it can.
      readonly convertToBlob = async () => new Blob([new Uint8Array(jpegWithTags(400, 300))]);
    },
  );
});
afterEach(() => vi.unstubAllGlobals());

const take = (bytes: Uint8Array) =>
  takePhoto(new Blob([new Uint8Array(bytes)]), 'board.png', () => undefined, new AbortController().signal);

describe('A picture file that is taken into a sheet', () => {
  it('is never decoded where its head says that it is no picture, or more than may be decoded', async () => {
    let refused = 0;
    for (const [what, bytes] of HARMFUL_PICTURES) {
      decodings = 0;
      const isRefused = !readHead(bytes).ok;
      const taken = await take(bytes);
      expect(decodings, what).toBe(isRefused ? 0 : 1);
      if (!isRefused) continue;
      refused += 1;
      expect(taken?.ok, what).toBe(false);
    }
    // Else nothing was tried: most of them are refused by their heads.
    expect(refused).toBeGreaterThan(HARMFUL_PICTURES.length / 2);
  });

  it('is taken where it is sound', async () => {
    expect(await take(pngOf(plainPixels(400, 300)))).toMatchObject({ ok: true, value: { widthPx: 400 } });
    expect(decodings).toBe(1);
  });

  it.each(Object.entries(TAGS))('keeps no %s, whatever packs it', async (_name, marks) => {
    const taken = await take(jpegHead(400, 300, 6));
    const kept = Buffer.from(taken?.ok ? taken.value.data : '', 'base64');
    expect(readHead(kept)).toMatchObject({ ok: true });
    for (const mark of marks) {
      expect(jpegWithTags(400, 300).includes(mark), mark).toBe(true);
      expect(kept.includes(mark), mark).toBe(false);
    }
  });
});
