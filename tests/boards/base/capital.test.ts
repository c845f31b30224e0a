import { expect, test } from 'vitest';
import { capital } from '../../../boards/base/capital';

// Unicode, SpecialCasing.txt: the capitals of ß and ᾀ are two letters. UAX 15: a letter and its marks are one letter.
test.each([
  ['power switch', 'Power switch'],
  ['élan', 'Élan'],
  ['e\u0301lan', 'Élan'],
  ['ßen', 'ßen'],
  ['ᾀ on pin 8', 'ᾀ on pin 8'],
  ['\u03b1\u0313\u0345 on pin 8', 'ᾀ on pin 8'],
  ['𐐨 of two halves', '𐐀 of two halves'],
  ['8 pins', '8 pins'],
  ['', ''],
])('“%s” begins as “%s”', (words, begun) => {
  expect(capital(words)).toBe(begun);
});
