import { crc32, deflateSync } from 'node:zlib';
import type { Pixels } from '../../../../boards/pinout/photo/straighten';

/** A chunk of a PNG: length, name, data, check sum (PNG, third edition, section 5.3). */
function chunk(name: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

function header(width: number, height: number): Buffer {
  const data = Buffer.alloc(13);
  data.writeUInt32BE(width, 0);
  data.writeUInt32BE(height, 4);
  // Eight bits a channel, red, green, blue, opacity.
  data.set([8, 6, 0, 0, 0], 8);
  return chunk('IHDR', data);
}

/** Pixels as a PNG file. */
export function pngOf({ width, height, data }: Pixels): Buffer {
  const rows = Buffer.alloc((width * 4 + 1) * height);
  for (let row = 0; row < height; row++)
    rows.set(data.subarray(row * width * 4, (row + 1) * width * 4), row * (width * 4 + 1) + 1);
  return Buffer.concat([
    SIGNATURE,
    header(width, height),
    chunk('IDAT', deflateSync(rows, { level: 1 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** A grey picture. */
export function plainPixels(width: number, height: number): Pixels {
  return { width, height, data: new Uint8ClampedArray(width * height * 4).fill(0x80) };
}

/** A PNG whose head says another size than its data have; its check sums are right. */
export function lyingPng(said: readonly [number, number], has: readonly [number, number]): Buffer {
  const honest = pngOf(plainPixels(...has));
  return Buffer.concat([SIGNATURE, header(...said), honest.subarray(SIGNATURE.length + 25)]);
}

/** The beginning of a JPEG as cameras write it: an Exif note which way up it was held, then the size; then no picture. */
export function jpegHead(width: number, height: number, orientation?: number): Buffer {
  const segment = (marker: number, data: Uint8Array) => {
    const head = Buffer.from([0xff, marker, 0, 0]);
    head.writeUInt16BE(data.length + 2, 2);
    return Buffer.concat([head, data]);
  };
  const frame = Buffer.from([8, 0, 0, 0, 0, 3, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0]);
  frame.writeUInt16BE(height, 1);
  frame.writeUInt16BE(width, 3);
  return Buffer.concat([
    Buffer.from([0xff, 0xd8]),
    segment(0xe0, Buffer.from('JFIF\0\x01\x01\0\0\x01\0\x01\0\0', 'latin1')),
    ...(orientation === undefined ? [] : [segment(0xe1, exif(orientation))]),
    segment(0xc0, frame),
    segment(0xda, Buffer.from([3, 1, 0, 2, 0x11, 3, 0x11, 0, 0x3f, 0])),
    Buffer.from([0xff, 0xd9]),
  ]);
}

/** What is written beside the pixels, by words that stand in it: Exif 2.32 and XMP hold place, owner, serial number. */
export const TAGS: Readonly<Record<string, readonly string[]>> = {
  'Exif, and with it no place on the globe': ['Exif', 'GPS'],
  XMP: ['xap', 'xmp'],
  'colour profile': ['ICC'],
  comment: ['study'],
};

/** The same beginning of a JPEG with all of that before its size. */
export function jpegWithTags(width: number, height: number): Buffer {
  const segment = (marker: number, text: string) => {
    const data = Buffer.from(text, 'latin1');
    const head = Buffer.from([0xff, marker, 0, 0]);
    head.writeUInt16BE(data.length + 2, 2);
    return Buffer.concat([head, data]);
  };
  const withExif = jpegHead(width, height, 6);
  return Buffer.concat([
    withExif.subarray(0, 2),
    segment(0xfe, 'taken in the study'),
    segment(0xe2, 'ICC_PROFILE\0\x01\x01'),
    segment(0xe1, 'http://ns.adobe.com/xap/1.0/\0<x:xmpmeta/>'),
    withExif.subarray(2),
  ]);
}

/** An Exif block (CIPA DC-008) with the orientation and a place on the globe. */
function exif(orientation: number): Buffer {
  const entry = (tag: number, type: number, count: number, value: number) => {
    const bytes = Buffer.alloc(12);
    bytes.writeUInt16BE(tag, 0);
    bytes.writeUInt16BE(type, 2);
    bytes.writeUInt32BE(count, 4);
    if (type === 3) bytes.writeUInt16BE(value, 8);
    else bytes.writeUInt32BE(value, 8);
    return bytes;
  };
  const directory = (...entries: readonly Buffer[]) =>
    Buffer.concat([Buffer.from([0, entries.length]), ...entries, Buffer.alloc(4)]);
  const [firstAt, gpsAt] = [8, 8 + 2 + 2 * 12 + 4];
  return Buffer.concat([
    Buffer.from('Exif\0\0MM\0*\0\0\0\x08', 'latin1'),
    directory(entry(0x0112, 3, 1, orientation), entry(0x8825, 4, 1, gpsAt)),
    directory(entry(0x0001, 2, 2, firstAt)),
    Buffer.from('GPS 48.2082 N 16.3738 E', 'latin1'),
  ]);
}

/** A WebP of the extended kind that says a size; then no picture. */
export function webpHead(width: number, height: number): Buffer {
  const file = Buffer.alloc(30);
  file.write('RIFF', 0, 'latin1');
  file.writeUInt32LE(22, 4);
  file.write('WEBPVP8X', 8, 'latin1');
  file.writeUInt32LE(10, 16);
  file.writeUIntLE(width - 1, 24, 3);
  file.writeUIntLE(height - 1, 27, 3);
  return file;
}
