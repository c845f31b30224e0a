import { expect, test } from 'vitest';
import { printable } from '../../../boards/handover/page/letters';

const LATIN = { has: (code: number) => code >= 0x20 && code < 0x180 };

test.each([
  ['what the fonts have', 'RST_SW−'.replace('−', '-'), 'RST_SW-'],
  ['an accent typed apart is one letter with it', 'e\u0301', 'é'],
  ['a script without letters', 'вкл', '▯▯▯'],
  ['a picture of several parts is one sign', '👩‍🔧', '▯'],
  ['a sign nobody sees is shown', 'a\u200bb', 'a▯b'],
  ['breaks of lines stay', 'a\nb', 'a\nb'],
])('%s', (_, text, shown) => {
  expect(printable(text, LATIN)).toBe(shown);
});
