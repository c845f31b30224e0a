import { beforeAll, describe, expect, test } from 'vitest';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { PaperFormat } from '../../../boards/handover/order';
import { type PinoutOptions, PLAIN_OPTIONS } from '../../../boards/handover/pinout/options';
import { CONNECTOR_TYPES } from '../../../boards/library/connectors/index';
import type { PaperKit } from '../../../electron/paper/kit';
import { makePaper } from '../../../electron/paper/make-paper';
import { boardWith } from '../../boards/handover/papers';
import { anywhere } from '../../boards/library/published';
import { HAS_POPPLER, kitFromPackages, pixelsOf, readByPoppler } from './kit';

const DAY = new Date(Date.UTC(2026, 10, 26));
let kit: PaperKit;
beforeAll(async () => {
  kit = await kitFromPackages();
});

async function made(board: BoardSheet, options: Partial<PinoutOptions> = {}, format: PaperFormat = 'pdf') {
  const order = {
    document: board,
    print: { kind: 'pinout', options: { ...PLAIN_OPTIONS, ...options } } as const,
    format,
    page: null,
    scale: 1,
  };
  const paper = await makePaper(kit, order, DAY);
  if (!paper.ok) throw new Error(paper.problem.code);
  return paper.value;
}

const LIBRARY = CONNECTOR_TYPES.map(({ id }) => ({ ...anywhere(id), id, print: id.toUpperCase() }));

test('The same sheet on the same day is the same file, byte for byte', async () => {
  const board = boardWith([anywhere('panel-2x5')]);
  const [first, second] = [await made(board), await made(board)];
  expect(Buffer.from(first.bytes).equals(Buffer.from(second.bytes))).toBe(true);
});

if (!HAS_POPPLER) process.stdout.write('PDF read by poppler: not run, its programs are not installed.\n');

describe.runIf(HAS_POPPLER)('Read by poppler', () => {
  test('every connector of the library has the number and the name of each pin as text', async () => {
    const { bytes } = await made(boardWith(LIBRARY));
    const text = (await readByPoppler('pdftotext', bytes, ['-layout'])).replaceAll('\u00a0', ' ');
    const heads = LIBRARY.map(({ print }, index) =>
      text.search(new RegExp(`^\\s*${index + 1} +${print}$`, 'm')),
    );
    for (const [index, { pins, print }] of LIBRARY.entries()) {
      expect({ print, found: (heads[index] ?? -1) > 0 }).toEqual({ print, found: true });
      const section = text.slice(heads[index], heads[index + 1]);
      const bare = section.replaceAll(/\s/g, '');
      for (const { pin, name = '' } of pins) {
        expect(section).toMatch(new RegExp(`\\s${pin} +\\S`));
        expect(bare).toContain(name.replaceAll(/\s/g, ''));
      }
    }
  });

  test('signs of the trade come out as themselves', async () => {
    const said = '330 Ω ±5 %, 10 µA, −12 V, 70 °C → ≥ 4,7 kΩ, Größe, Łódź, señal';
    const connector = { ...anywhere('panel-2x5'), notes: said };
    const text = await readByPoppler('pdftotext', (await made(boardWith([connector]))).bytes, ['-layout']);
    expect(text.replaceAll('\u00a0', ' ')).toContain(said);
  });

  test('every font is inside, cut down to its letters, and knows what they mean', async () => {
    const fonts = await readByPoppler('pdffonts', (await made(boardWith(LIBRARY))).bytes);
    const lines = fonts.trim().split('\n').slice(2);
    expect(lines.length).toBeGreaterThanOrEqual(3);
    for (const line of lines) expect(line).toMatch(/^[A-Z]{6}\+\S+ .*yes yes yes/);
  });

  test('it has its title, its language and the size of its paper', async () => {
    const board = boardWith([anywhere('panel-2x5')], 'Werkbank 3');
    const a4 = await readByPoppler('pdfinfo', (await made(board)).bytes);
    expect(a4).toMatch(/^Title: +Werkbank 3: pinout$/m);
    expect(a4).toMatch(/^Page size: +595\.27\d+ x 841\.8\d+ pts \(A4\)$/m);
    const letter = await readByPoppler('pdfinfo', (await made(board, { paper: 'letter' })).bytes);
    expect(letter).toMatch(/^Page size: +612 x 792 pts \(letter\)$/m);
    expect(a4).toMatch(/^CreationDate: +Thu Nov 26/m);
  });

  test('not one pixel of it is coloured, enough are dark, and the margin is white', async () => {
    const { bytes } = await made(boardWith([anywhere('panel-2x5'), { ...anywhere('speaker-1x4'), id: 's' }]));
    const { width, height, rgb } = await pixelsOf(bytes, 1);
    expect([width, height]).toEqual([794, 1123]);
    let coloured = 0;
    let dark = 0;
    for (let at = 0; at < rgb.length; at += 3) {
      if (rgb[at] !== rgb[at + 1] || rgb[at] !== rgb[at + 2]) coloured += 1;
      if ((rgb[at] ?? 0) < 0x50) dark += 1;
    }
    expect(coloured).toBe(0);
    expect(dark / (width * height)).toBeGreaterThan(0.005);
    // A margin of 14 mm is 52 pixels.
    expect(rgb.subarray(0, 3 * width * 50).every((value) => value === 255)).toBe(true);
  });
});

describe('Names that mean harm', () => {
  const LONG = 'W'.repeat(200);
  test.each([
    ['200 letters without a break', LONG],
    ['markup', '<script>alert(1)</script>'],
    ['right to left', 'مفتاح الطاقة'],
    ['pictures', '🔌🖥️👩‍🔧'],
    ['the commands of a PDF', ') Tj ET endstream endobj'],
  ])('%s, in every field: each kind of file is made', async (_, text) => {
    const connector = {
      ...anywhere('panel-2x5'),
      print: text,
      title: text,
      notes: text,
      pins: [{ pin: '1', name: text, notes: text, source: { kind: 'manual' as const, where: text } }],
    };
    const board = { ...boardWith([connector], text), notes: text };
    for (const format of ['pdf', 'svg', 'png'] as const)
      expect((await made(board, {}, format)).bytes.length).toBeGreaterThan(1_000);
    if (!HAS_POPPLER) return;
    const read = await readByPoppler('pdftotext', (await made(board)).bytes);
    const bare = read.replaceAll(/\s/g, '');
    if (/^[ -~]*$/.test(text)) expect(bare).toContain(text.replaceAll(/\s/g, ''));
    else {
      expect(read).toContain('▯▯');
      expect(read).toContain('▯ stands for a sign that this print has no letter for');
    }
  });
});
