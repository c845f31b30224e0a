import { expect, test } from 'vitest';
import { ok, refuse } from '../../../boards/base/result';
import { parameterOf } from '../../../boards/signals/parameters';
import { stubParameters } from '../../../boards/signals/stub-parameters';
import { readQuantity, readValue, unusualWords, usualWords } from '../../../renderer/words/value-words';

const feed = parameterOf('led-feed-ohms');
const minus12 = parameterOf('main-minus-12v');

test('the usual range of a value is told in its unit', () => {
  expect(usualWords(feed)).toBe('usually 150\u00a0Ω to 1\u00a0kΩ');
  expect(usualWords(minus12)).toBe('usually −13.2 to −10.8\u00a0V');
});

test.each([
  ['470', 470],
  ['4.7k', 4700],
  ['4,7 kΩ', 4700],
  [' 330\u00a0Ω ', 330],
  ['1M', 1_000_000],
  ['330 \u2126', 330],
  ['330 ohm', 330],
])('%s typed for a resistor is read as it is meant', (typed, ohms) => {
  expect(readValue(typed, feed)).toEqual(ok(ohms));
});

test('volts may be negative, with either minus', () => {
  expect(readValue('-12', minus12)).toEqual(ok(-12));
  expect(readValue('−11.9 V', minus12)).toEqual(ok(-11.9));
});

test.each(['abc', '4k7x', '1 2', '-', '.', '330 V', '2 A', '330 Ohms each'])(
  '%s is refused as no number, with one that would do',
  (typed) => {
    expect(readValue(typed, feed)).toMatchObject({
      ok: false,
      problem: 'This is no number of ohms. Type one such as 330 or 4.7k.',
    });
  },
);

test.each(['10,000', '4,700 Ω', '10,000 kΩ', '1,000,000', '+1,500'])(
  '%s ohms can be thousands or a fraction, and is refused as such',
  (typed) => {
    for (const read of [readValue(typed, feed), readQuantity(typed, 'ohm')])
      expect(read).toEqual(
        refuse('This can be read in two ways. Type it without a comma, with a point before tenths.'),
      );
  },
);

test('a comma before three figures is a point where thousands cannot be meant', () => {
  expect(readQuantity('0,470 kΩ', 'ohm')).toEqual(ok(470));
  expect(readQuantity('1,2000', 'ohm')).toEqual(ok(1.2));
  expect(readQuantity('4,970 V', 'V')).toEqual(ok(4.97));
  // 5,000 mV are 5 V or 5 mV.
  expect(readQuantity('5,000 mV', 'V').ok).toBe(false);
});

test('a resistor of nothing, below nothing or beyond any board is refused with the bounds', () => {
  for (const typed of ['0', '-330', '99999M'])
    expect(readValue(typed, feed)).toMatchObject({
      ok: false,
      problem: expect.stringContaining('Type one from'),
    });
});

test('an unusual value stands, and is worth a second look', () => {
  expect(unusualWords(330, feed)).toBe('');
  expect(unusualWords(33, feed)).toBe('Outside of what is usual, 150\u00a0Ω to 1\u00a0kΩ. Look at it again.');
});

test('behind a drive LED feed are its resistor and its rail, behind an unconnected pin nothing', () => {
  expect(stubParameters({ signal: 'drive-led-feed' })).toEqual(['led-feed-ohms', 'main-5v']);
  expect(stubParameters({ signal: 'no-connection' })).toEqual([]);
});
