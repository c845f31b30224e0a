import { expect, test } from 'vitest';
import { ok } from '../../../boards/base/result';
import { readSlack } from '../../../renderer/areas/route/cables/cable-fields';
import { readAmount } from '../../../renderer/words/figure-words';

const TWO_WAYS = 'This can be read in two ways. Type it without a comma, with a point before tenths.';

test.each([
  ['1200', 1_200],
  ['1.2', 1.2],
  ['1,2', 1.2],
  [' 0,125 ', 0.125],
  ['1,20', 1.2],
  ['.5', 0.5],
  ['', null],
])('“%s” is a figure of a label', (typed, value) => {
  expect(readAmount(typed, 2_000, 'm³/h')).toEqual(ok(value));
});

test.each(['1,200', '12,500', '1,200,000'])(
  '“%s” could be thousands or thousandths, and is asked about',
  (typed) => {
    for (const read of [readAmount(typed, 2_000, 'm³/h'), readAmount(typed, 100, 'amps'), readSlack(typed)])
      expect(read).toEqual({ ok: false, problem: TWO_WAYS });
  },
);

test.each(['0', '-1', '100.1', '1e1', '0x10', '1 2', '1.2.3', 'Infinity', 'amps'])(
  '“%s” is no amps, and is told what may be',
  (typed) => {
    expect(readAmount(typed, 100, 'amps')).toEqual({
      ok: false,
      problem: 'Type amps, more than 0 and at most 100, or nothing.',
    });
  },
);

test('slack is read to the hundredth, and may be nothing at all, but not nothing said', () => {
  expect(readSlack('12,5')).toEqual(ok(12.5));
  expect(readSlack('0.004')).toEqual(ok(0));
  expect(readSlack('0')).toEqual(ok(0));
  for (const typed of ['', '-1', '1000.1', 'none'])
    expect(readSlack(typed)).toEqual({ ok: false, problem: 'Type millimetres, from 0 to 1000.' });
});
