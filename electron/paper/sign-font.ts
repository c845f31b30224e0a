import type { Contour, SignShape } from './sign-shapes';

/**
 * A TrueType font of straight-edged shapes, as little of one as printers, browsers and readers take.
 * Tables as the OpenType specification 1.9 gives them. The first glyph is empty and stands for the unknown.
 */
export function fontOf(name: string, bold: boolean, shapes: readonly SignShape[]): Uint8Array {
  const glyphs: readonly SignShape[] = [{ codePoints: [], advance: 500, contours: [] }, ...shapes];
  const bounds = boundsOf(glyphs.flatMap(({ contours }) => contours));
  const drawn = glyphs.map(({ contours }) => glyphTable(contours));
  const tables: readonly (readonly [tag: string, bytes: Bytes])[] = [
    ['OS/2', os2Table(glyphs, bold)],
    ['cmap', cmapTable(glyphs)],
    ['glyf', drawn.flat()],
    ['head', headTable(bounds, bold)],
    ['hhea', hheaTable(glyphs, bounds)],
    ['hmtx', glyphs.flatMap(({ advance, contours }) => [...u16(advance), ...u16(boundsOf(contours).left)])],
    ['loca', locaTable(drawn)],
    ['maxp', maxpTable(glyphs)],
    ['name', nameTable(name, bold)],
    ['post', [...u32(0x30000), ...u32(0), ...u16(-100), ...u16(50), ...new Array(20).fill(0)]],
  ];
  return file(tables);
}

type Bytes = readonly number[];

const ASCENT = 984;
const DESCENT = -316;

function u16(value: number): Bytes {
  const whole = Math.round(value) & 0xffff;
  return [whole >> 8, whole & 0xff];
}

function u32(value: number): Bytes {
  return [...u16(Math.floor(value / 0x10000)), ...u16(value % 0x10000)];
}

function file(tables: readonly (readonly [tag: string, bytes: Bytes])[]): Uint8Array {
  const power = 2 ** Math.floor(Math.log2(tables.length));
  const head = [
    ...u32(0x10000),
    ...u16(tables.length),
    ...u16(power * 16),
    ...u16(Math.log2(power)),
    ...u16((tables.length - power) * 16),
  ];
  let offset = head.length + tables.length * 16;
  const directory: number[] = [];
  const body: number[] = [];
  for (const [tag, bytes] of tables) {
    const padded = [...bytes, ...new Array((4 - (bytes.length % 4)) % 4).fill(0)];
    directory.push(...ascii(tag), ...u32(checksum(padded)), ...u32(offset), ...u32(bytes.length));
    body.push(...padded);
    offset += padded.length;
  }
  const whole = Uint8Array.from([...head, ...directory, ...body]);
  const at = directoryOffset(tables, 'head', head.length);
  // The sum of the whole file, with this field still 0, taken from the constant of the specification.
  new DataView(whole.buffer).setUint32(at + 8, (0xb1b0afba - checksum([...whole])) >>> 0);
  return whole;
}

function directoryOffset(
  tables: readonly (readonly [string, Bytes])[],
  wanted: string,
  head: number,
): number {
  let offset = head + tables.length * 16;
  for (const [tag, bytes] of tables) {
    if (tag === wanted) return offset;
    offset += Math.ceil(bytes.length / 4) * 4;
  }
  throw new Error(`No table ${wanted}`);
}

function checksum(bytes: Bytes): number {
  let sum = 0;
  for (let at = 0; at < bytes.length; at += 4) {
    const word =
      ((bytes[at] ?? 0) << 24) |
      ((bytes[at + 1] ?? 0) << 16) |
      ((bytes[at + 2] ?? 0) << 8) |
      (bytes[at + 3] ?? 0);
    sum = (sum + word) >>> 0;
  }
  return sum;
}

function ascii(text: string): Bytes {
  return [...text].map((letter) => letter.charCodeAt(0));
}

interface Bounds {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

function boundsOf(contours: readonly Contour[]): Bounds {
  const points = contours.flat();
  if (points.length === 0) return { left: 0, bottom: 0, right: 0, top: 0 };
  const xs = points.map(([x]) => Math.round(x));
  const ys = points.map(([, y]) => Math.round(y));
  return { left: Math.min(...xs), bottom: Math.min(...ys), right: Math.max(...xs), top: Math.max(...ys) };
}

/** Every point on the curve, each as a difference of two bytes. */
function glyphTable(contours: readonly Contour[]): Bytes {
  if (contours.length === 0) return [];
  const { left, bottom, right, top } = boundsOf(contours);
  const points = contours.flat().map(([x, y]) => [Math.round(x), Math.round(y)] as const);
  let last = -1;
  const ends = contours.flatMap((line) => {
    last += line.length;
    return u16(last);
  });
  const differences = (axis: 0 | 1) =>
    points.flatMap((point, index) => u16(point[axis] - (points[index - 1]?.[axis] ?? 0)));
  const head = [contours.length, left, bottom, right, top].flatMap(u16);
  const bytes = [...head, ...ends, ...u16(0), ...points.map(() => 1), ...differences(0), ...differences(1)];
  return [...bytes, ...new Array((4 - (bytes.length % 4)) % 4).fill(0)];
}

function locaTable(drawn: readonly Bytes[]): Bytes {
  let at = 0;
  return [
    ...drawn.flatMap((bytes) => {
      const here = at;
      at += bytes.length;
      return u32(here);
    }),
    ...u32(at),
  ];
}

/** Format 4, a segment for each character; and the last that closes the list. */
function cmapTable(glyphs: readonly SignShape[]): Bytes {
  const pairs = glyphs
    .flatMap(({ codePoints }, glyph) => codePoints.map((code) => ({ code, glyph })))
    .sort((a, b) => a.code - b.code);
  const codes = [...pairs.map(({ code }) => code), 0xffff];
  const deltas = [...pairs.map(({ code, glyph }) => glyph - code), 1];
  const count = codes.length;
  const power = 2 ** Math.floor(Math.log2(count));
  const segments = [
    ...[count * 2, power * 2, Math.log2(power), (count - power) * 2].flatMap(u16),
    ...codes.flatMap(u16),
    ...u16(0),
    ...codes.flatMap(u16),
    ...deltas.flatMap(u16),
    ...codes.flatMap(() => u16(0)),
  ];
  return [
    ...u16(0),
    ...u16(1),
    ...u16(3),
    ...u16(1),
    ...u32(12),
    ...u16(4),
    ...u16(6 + segments.length),
    ...u16(0),
    ...segments,
  ];
}

function headTable({ left, bottom, right, top }: Bounds, bold: boolean): Bytes {
  return [
    ...u32(0x10000),
    ...u32(0x10000),
    ...u32(0),
    ...u32(0x5f0f3cf5),
    ...u16(3),
    ...u16(1000),
    ...new Array(16).fill(0),
    ...[left, bottom, right, top].flatMap(u16),
    ...u16(bold ? 1 : 0),
    ...u16(8),
    ...u16(2),
    ...u16(1),
    ...u16(0),
  ];
}

function hheaTable(glyphs: readonly SignShape[], { left, right }: Bounds): Bytes {
  const widest = Math.max(...glyphs.map(({ advance }) => advance));
  return [
    ...u32(0x10000),
    ...[ASCENT, DESCENT, 0, widest, left, 0, right, 1, 0, 0, 0, 0, 0, 0, 0, glyphs.length].flatMap(u16),
  ];
}

function maxpTable(glyphs: readonly SignShape[]): Bytes {
  const points = Math.max(...glyphs.map(({ contours }) => contours.flat().length));
  const contours = Math.max(...glyphs.map((glyph) => glyph.contours.length));
  return [
    ...u32(0x10000),
    ...[glyphs.length, points, contours, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0].flatMap(u16),
  ];
}

function os2Table(glyphs: readonly SignShape[], bold: boolean): Bytes {
  const codes = glyphs.flatMap(({ codePoints }) => codePoints);
  return [
    ...[4, 600, bold ? 700 : 400, 5, 0].flatMap(u16),
    ...[650, 600, 0, 75, 650, 600, 0, 350, 50, 300, 0].flatMap(u16),
    ...new Array(10).fill(0),
    ...u32(0),
    ...u32(0),
    ...u32(0),
    ...u32(0),
    ...ascii('LEAD'),
    ...[bold ? 0x20 : 0x40, Math.min(...codes), Math.max(...codes)].flatMap(u16),
    ...[ASCENT, DESCENT, 0, ASCENT, -DESCENT].flatMap(u16),
    ...u32(1),
    ...u32(0),
    ...[496, 668, 0, 32, 1].flatMap(u16),
  ];
}

function nameTable(name: string, bold: boolean): Bytes {
  const style = bold ? 'Bold' : 'Regular';
  const entries = [
    [1, name],
    [2, style],
    [3, `${name} ${style}`],
    [4, `${name} ${style}`],
    [5, 'Version 1.0'],
    [6, `${name.replaceAll(' ', '')}-${style}`],
  ] as const;
  const records: number[] = [];
  const strings: number[] = [];
  for (const [id, text] of entries) {
    const bytes = [...text].flatMap((letter) => u16(letter.charCodeAt(0)));
    records.push(...[3, 1, 0x409, id, bytes.length, strings.length].flatMap(u16));
    strings.push(...bytes);
  }
  return [...u16(0), ...u16(entries.length), ...u16(6 + records.length), ...records, ...strings];
}
