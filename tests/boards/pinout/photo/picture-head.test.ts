import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodedProblem, readHead } from '../../../../boards/pinout/photo/picture-head';
import { PICTURE_LIMITS, type PictureProblem } from '../../../../boards/pinout/photo/picture-problem';
import { pictureProblemWords } from '../../../../boards/pinout/photo/picture-words';
import { jpegHead, lyingPng, plainPixels, pngOf, webpHead } from './picture-files';

const latin = (text: string) => Buffer.from(text, 'latin1');

/** The same as a file, told as it would be told on the screen. */
function told(bytes: Uint8Array): string {
  const read = readHead(bytes);
  if (read.ok) return `${read.value.kind} ${read.value.widthPx} × ${read.value.heightPx}`;
  const { title, lines, advice } = pictureProblemWords(read.problem, 'board.png');
  return [title, ...lines, advice].join(' ').replaceAll('\u00a0', ' ');
}

describe('what a picture says of itself, before it is decoded', () => {
  it('is its kind and its size, for the three kinds that are taken', () => {
    expect(told(pngOf(plainPixels(40, 30)))).toBe('PNG 40 × 30');
    expect(told(jpegHead(4_000, 3_000))).toBe('JPEG 4000 × 3000');
    expect(told(jpegHead(4_000, 3_000, 6))).toBe('JPEG 4000 × 3000');
    expect(told(webpHead(640, 480))).toBe('WebP 640 × 480');
  });

  it('may be so much and not a pixel more', () => {
    const code = (width: number, height: number) => {
      const read = readHead(jpegHead(width, height));
      return read.ok ? 'taken' : read.problem.code;
    };
    const { leastSidePx: least, sidePx: most } = PICTURE_LIMITS;
    expect(code(least, least)).toBe('taken');
    expect(code(least - 1, 100)).toBe('too-small');
    expect(code(100, 0)).toBe('too-small');
    expect(code(most, 100)).toBe('taken');
    expect(code(most + 1, 100)).toBe('too-long-side');
    expect(code(10_000, 5_000)).toBe('taken');
    expect(code(10_000, 5_001)).toBe('too-many-pixels');
  });

  it('is not read from a file of more than 64 MB', () => {
    const whole = Buffer.alloc(PICTURE_LIMITS.fileBytes + 1);
    whole.set(jpegHead(400, 300).subarray(0, -2));
    whole.set([0xff, 0xd9], PICTURE_LIMITS.fileBytes - 2);
    expect(readHead(whole.subarray(0, PICTURE_LIMITS.fileBytes))).toMatchObject({ ok: true });
    expect(readHead(whole)).toEqual({
      ok: false,
      problem: { code: 'too-large-file', bytes: PICTURE_LIMITS.fileBytes + 1 },
    });
  });
});

describe('what is no photo is told in words', () => {
  const NOT = '“board.png” cannot be used as a photo';
  const TAKE = 'Choose a photo as PNG, JPEG or WebP.';
  const AGAIN = 'Copy it from the camera once more, or choose another photo.';
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="400" height="300"><path d="M0 0h9"/></svg>';

  it.each<readonly [string, Uint8Array, string]>([
    ['nothing', Buffer.alloc(0), `There is nothing in it. ${AGAIN}`],
    ['an SVG', latin(svg), `It is an SVG: a drawing, not a photo, whatever its name says. ${TAKE}`],
    [
      'an SVG behind a prologue',
      latin(`\xef\xbb\xbf<?xml version="1.0"?>\n<!-- drawn -->\n${svg}`),
      `It is an SVG: a drawing, not a photo, whatever its name says. ${TAKE}`,
    ],
    [
      'a web page',
      latin('\n<!DOCTYPE html>\n<html><body><img src="x.png"></body></html>'),
      `It is a web page and not the picture on it. Save the picture itself. ${TAKE}`,
    ],
    ['text', latin('pin 1: PLED+\npin 2: PWR'), `It is not a picture but text. ${TAKE}`],
    ['a PDF', latin('%PDF-1.7\n%\xe2\xe3\xcf\xd3'), `It is not a picture but a PDF. ${TAKE}`],
    ['noise', Uint8Array.from({ length: 99 }, (_, at) => (at * 89) % 256), `It is not a picture. ${TAKE}`],
    [
      'a GIF',
      latin('GIF89a\x01\0\x01\0'),
      'It is a picture of the kind GIF. Save it as PNG, JPEG or WebP first.',
    ],
    [
      'a telephone’s own kind',
      latin('\0\0\0\x18ftypheic\0\0\0\0'),
      'It is a picture of the kind HEIF. Save it as PNG, JPEG or WebP first.',
    ],
    [
      'a head of 400 megapixels',
      lyingPng([20_000, 20_000], [16, 16]),
      'It says it has 20,000 × 20,000 pixels: 400 megapixels. A photo can have at most 50 megapixels. Save it at a smaller size, or cut out the part with the connector.',
    ],
    [
      'a picture one pixel high',
      pngOf(plainPixels(400, 1)),
      'It says it has 400 × 1 pixels, and pins cannot be seen with fewer than 16 pixels to a side. Take a photo from nearer by.',
    ],
  ])('%s', (_, bytes, words) => {
    expect(told(bytes)).toBe(`${NOT} ${words}`);
  });

  it('a picture that ends anywhere before its end is cut off, wherever that is', () => {
    const [png, jpeg, webp] = [pngOf(plainPixels(40, 30)), jpegHead(400, 300, 1), webpHead(640, 480)];
    for (const [whole, kind, least] of [
      [png, 'PNG', 8],
      [jpeg, 'JPEG', 3],
      [webp, 'WebP', 12],
    ] as const) {
      expect(readHead(whole)).toMatchObject({ ok: true });
      for (let length = least; length < whole.length - (kind === 'PNG' ? 4 : 0); length++)
        expect(readHead(whole.subarray(0, length)), `${kind} ${length}`).toEqual({
          ok: false,
          problem: { code: 'cut-off', kind },
        });
    }
    expect(told(png.subarray(0, 60))).toBe(
      `${NOT} It begins as a PNG and is cut off before its end. ${AGAIN}`,
    );
  });

  it('any bytes at all, and any picture with bytes changed, bring an answer and never a throw', () => {
    const seen = new Map<string, number>();
    const look = (bytes: Uint8Array) => {
      const read = readHead(bytes);
      const code = read.ok ? 'taken' : read.problem.code;
      seen.set(code, (seen.get(code) ?? 0) + 1);
    };
    const wholes = [pngOf(plainPixels(40, 30)), jpegHead(400, 300, 6), webpHead(640, 480)];
    const change = fc.tuple(fc.nat(200), fc.nat(255));
    fc.assert(
      fc.property(
        fc.constantFrom(...wholes),
        fc.array(change, { minLength: 1, maxLength: 8 }),
        (whole, changes) => {
          const bytes = Uint8Array.from(whole);
          for (const [at, value] of changes) bytes[at % bytes.length] = value;
          look(bytes);
        },
      ),
      { seed: 20_260_404, numRuns: 3_000 },
    );
    fc.assert(fc.property(fc.uint8Array({ maxLength: 200 }), look), { seed: 20_260_405, numRuns: 1_000 });
    expect([...seen.keys()]).toEqual(expect.arrayContaining(['taken', 'cut-off', 'no-picture', 'empty']));
  });

  it('the head and the decoded picture have to agree; a quarter turn by the camera’s note is no lie', () => {
    const head = readHead(jpegHead(4_000, 3_000, 6));
    if (!head.ok) throw new Error('Not read');
    const problem = (widthPx: number, heightPx: number) => decodedProblem(head.value, { widthPx, heightPx });
    expect(problem(4_000, 3_000)).toBeUndefined();
    expect(problem(3_000, 4_000)).toBeUndefined();
    const lie: PictureProblem = {
      code: 'lying',
      saidWidthPx: 4_000,
      saidHeightPx: 3_000,
      widthPx: 400,
      heightPx: 300,
    };
    expect(problem(400, 300)).toEqual(lie);
    expect(pictureProblemWords(lie, 'board.jpg').lines).toEqual([
      'It says it has 4,000 × 3,000\u00a0pixels, and it has 400 × 300\u00a0pixels.',
    ]);
  });
});
