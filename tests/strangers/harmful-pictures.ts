import { crc32, deflateSync } from 'node:zlib';
import { jpegHead, lyingPng, plainPixels, pngOf, webpHead } from '../boards/pinout/photo/picture-files';

const latin = (text: string) => Buffer.from(text, 'latin1');
const SIDES = [0, 1, 15, 16, 2_000, 16_384, 16_385, 20_000, 32_767, 65_535] as const;
const PAIRS = SIDES.flatMap((width) => SIDES.map((height) => [width, height] as const));

function chunk(name: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([latin(name), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

const HEAD_BYTES = 33;

/** A small PNG with a chunk put in behind its head. */
function withChunks(...chunks: readonly Buffer[]): Buffer {
  const png = pngOf(plainPixels(40, 30));
  return Buffer.concat([png.subarray(0, HEAD_BYTES), ...chunks, png.subarray(HEAD_BYTES)]);
}

/** Bytes that come to a hundred megabytes when they are unpacked. */
const BOMB = deflateSync(Buffer.alloc(100 * 1024 * 1024), { level: 9 });

function gif(width: number, height: number): Buffer {
  const head = Buffer.from('GIF89a\0\0\0\0\x80\0\0', 'latin1');
  head.writeUInt16LE(width, 6);
  head.writeUInt16LE(height, 8);
  return head;
}

function avif(width: number, height: number): Buffer {
  const box = (name: string, data: Buffer) => {
    const size = Buffer.alloc(4);
    size.writeUInt32BE(data.length + 8);
    return Buffer.concat([size, latin(name), data]);
  };
  const ispe = Buffer.alloc(12);
  ispe.writeUInt32BE(width, 4);
  ispe.writeUInt32BE(height, 8);
  return Buffer.concat([box('ftyp', latin('avif\0\0\0\0avif')), box('meta', box('ispe', ispe))]);
}

const SVG = '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>';

/** A picture that fits within the limits, whatever else it claims; or one that does not. */
export const HARMFUL_PICTURES: readonly (readonly [string, Uint8Array])[] = [
  ...PAIRS.filter(([w, h]) => w > 2_000 || h > 2_000).flatMap(
    ([w, h]): readonly (readonly [string, Uint8Array])[] => [
      [`a PNG that says ${w} × ${h}`, lyingPng([w, h], [16, 16])],
      [`a JPEG that says ${w} × ${h}`, jpegHead(w, h)],
      ...(w > 0 && h > 0 ? [[`a WebP that says ${w} × ${h}`, webpHead(w, h)] as const] : []),
    ],
  ),
  ...[2 ** 31 - 1, 2 ** 31, 2 ** 32 - 1].map(
    (side) => [`a PNG that says ${side} a side`, lyingPng([side, side], [16, 16])] as const,
  ),
  ...SIDES.map((side) => [`a GIF of ${side} a side`, gif(side, side)] as const),
  ...SIDES.map((side) => [`an AVIF of ${side} a side`, avif(side, side)] as const),
  ['a PNG with a text of 100 MB, packed', withChunks(chunk('zTXt', Buffer.concat([latin('x\0\0'), BOMB])))],
  ['a PNG with a colour profile of 100 MB', withChunks(chunk('iCCP', Buffer.concat([latin('x\0\0'), BOMB])))],
  [
    'a PNG with a packed text in many languages',
    withChunks(chunk('iTXt', Buffer.concat([latin('x\0\x01\0\0\0'), BOMB]))),
  ],
  ['a PNG of a million frames', withChunks(chunk('acTL', Buffer.from([0, 15, 66, 64, 0, 0, 0, 0])))],
  ['a PNG of two heads', withChunks(pngOf(plainPixels(40, 30)).subarray(8, HEAD_BYTES))],
  [
    'a PNG with a chunk longer than the file',
    withChunks(Buffer.from([0x7f, 0xff, 0xff, 0xff, 0x74, 0x45, 0x58, 0x74])),
  ],
  [
    'a PNG with ten thousand chunks',
    withChunks(...Array.from({ length: 10_000 }, () => chunk('tEXt', latin('a\0b')))),
  ],
  ['a PNG that is a script too', Buffer.concat([pngOf(plainPixels(40, 30)), latin(SVG)])],
  ['a JPEG that is a script too', Buffer.concat([jpegHead(400, 300), latin(`<script>alert(1)</script>`)])],
  ['a GIF that is a script too', latin('GIF89a/*\x01\0*/=1;alert(1)')],
  ['an archive behind a PNG', Buffer.concat([pngOf(plainPixels(40, 30)), latin('PK\x03\x04')])],
  ['an SVG under another name', latin(SVG)],
  ['an SVG behind a byte order mark', latin(`\xef\xbb\xbf${SVG}`)],
  ['an SVG behind a comment', latin(`<!-- x --><?xml version="1.0"?>${SVG}`)],
  ['an SVG in UTF-16', Buffer.from(`\ufeff${SVG}`, 'utf16le')],
  ['a web page', latin('<!doctype html><script>alert(1)</script>')],
  ['a PDF', latin('%PDF-1.7')],
  ['nothing', Buffer.alloc(0)],
  ['a megabyte of zeros', Buffer.alloc(1024 * 1024)],
];
