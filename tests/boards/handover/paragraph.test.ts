import fc from 'fast-check';
import { expect, test } from 'vitest';
import { measureByTable } from '../../../boards/drawing/measure';
import { linesOf } from '../../../boards/handover/page/paragraph';
import { TYPES } from '../../../boards/handover/page/type';

const type = TYPES.body;
const width = (line: string) => measureByTable(line, type.sizeMm, type.face);

test('A text is broken between words', () => {
  expect(linesOf('power switch and reset', 20, type, measureByTable)).toEqual(['power switch', 'and reset']);
});

test('A break in the text stays a break, an empty line too', () => {
  expect(linesOf('a\n\nb', 20, type, measureByTable)).toEqual(['a', '', 'b']);
});

test('Of any text nothing is left out but spaces at breaks, and every line of more than a letter fits', () => {
  const word = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 });
  fc.assert(
    fc.property(fc.array(word, { maxLength: 12 }), fc.integer({ min: 4, max: 80 }), (words, mm) => {
      const text = words.join(' ');
      const lines = linesOf(text, mm, type, measureByTable);
      const bare = (said: string) => said.replace(/[ \t\n]/g, '');
      expect(bare(lines.join(''))).toBe(bare(text));
      for (const line of lines) expect([...line].length <= 1 || width(line) <= mm + 1e-6).toBe(true);
    }),
  );
});
