import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { measureByTable } from '../../../boards/drawing/measure';
import { openFont } from '../../../electron/paper/fonts';
import type { PaperKit } from '../../../electron/paper/kit';
import { fontOf } from '../../../electron/paper/sign-font';
import { signShapes } from '../../../electron/paper/sign-shapes';
import { inRoot } from '../../../electron/start/place.mjs';
import { kitFromPackages } from './kit';

let kit: PaperKit;
beforeAll(async () => {
  kit = await kitFromPackages();
});

/** The folders whose words can come to stand on paper. */
const ON_PAPER = ['document', 'findings', 'handover', 'library', 'signals'];

/** Every character in their sources that is not plain ASCII: what our own words can hold. */
function ownCharacters(): ReadonlySet<string> {
  const files = ON_PAPER.flatMap((folder) =>
    readdirSync(inRoot('boards', folder), { recursive: true, withFileTypes: true }),
  )
    .filter((entry) => entry.isFile() && /\.(ts|json)$/.test(entry.name))
    .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'));
  const strings = files.flatMap(
    (text) => text.replaceAll(/^\s*(\/\*\*|\*|\/\/).*$/gm, '').match(/[\u00a0-\u{10ffff}]/gu) ?? [],
  );
  return new Set(strings);
}

test('The print has a letter for every character of our own words', () => {
  const own = ownCharacters();
  expect(own.size).toBeGreaterThan(7);
  const missing = [...own].filter((character) => !kit.fonts.has(character.codePointAt(0) ?? 0));
  expect(missing).toEqual([]);
});

test.each(['Ω', 'Ω', 'µ', 'μ', '→', '←', '≥', '≤', '≠', '▯', '±', '−', '°', '×', 'ß', 'Ł', 'ő'])(
  '%s can be printed in each face',
  (sign) => {
    for (const face of ['text', 'strong', 'mono'] as const) {
      const [run] = kit.fonts.runsOf(sign, face);
      expect(run?.font.font.hasGlyphForCodePoint(sign.codePointAt(0) ?? 0)).toBe(true);
      expect(kit.fonts.measure(sign, 10, face)).toBeGreaterThan(1);
    }
  },
);

test('The window’s table of widths says what the font files say, to a fiftieth of the type size', () => {
  const words = 'PWR_SW+ power LED (grey) 0123456789 Front panel';
  for (const face of ['text', 'strong', 'mono'] as const)
    for (const letter of words)
      expect(Math.abs(kit.fonts.measure(letter, 1, face) - measureByTable(letter, 1, face))).toBeLessThan(
        0.02,
      );
});

test('Our own font of signs is read by fontkit as it was drawn', () => {
  const shapes = signShapes(80);
  const { font } = openFont('signs', fontOf('Signs', false, shapes));
  expect(font.unitsPerEm).toBe(1000);
  for (const { codePoints, advance, contours } of shapes)
    for (const code of codePoints) {
      const run = font.layout(String.fromCodePoint(code));
      expect(run.advanceWidth).toBe(advance);
      const moves = run.glyphs[0]?.path.commands.filter(({ command }) => command === 'moveTo') ?? [];
      expect(moves).toHaveLength(contours.length);
    }
});
