import { expect, test } from 'vitest';
import { ok } from '../../../boards/base/result';
import {
  HOLE_BOUNDS,
  mmFigures,
  mmWords,
  PLACE_BOUNDS,
  readLength,
  SIZE_BOUNDS,
} from '../../../renderer/words/length-words';

const NBSP = '\u00a0';

test.each([
  ['12', 12],
  ['12,5', 12.5],
  [' 12.5 mm ', 12.5],
  ['1.2cm', 12],
  // One inch is 25.4 mm since the agreement of 1959.
  ['9.6 in', 243.84],
  ['0.1"', 2.54],
  ['-3', -3],
  ['−0.25 in', -6.35],
  ['.5', 0.5],
  ['-0.001', 0],
])('%s is read as %d mm', (typed, mm) => {
  expect(readLength(typed, PLACE_BOUNDS)).toEqual(ok(mm));
});

test.each(['', 'wide', '12 13', '1e3', '12 ft', '0x10', '१२', '--3', 'Infinity'])(
  '“%s” is no length',
  (typed) => {
    expect(readLength(typed, PLACE_BOUNDS)).toEqual({
      ok: false,
      problem: `This is no length. Type millimetres such as 12.5, or inches such as 0.5${NBSP}in.`,
    });
  },
);

test.each(['0', '-244', '1000.01', '0.004', '99999999999999999999'])('%s is no size of a board', (typed) => {
  expect(readLength(typed, SIZE_BOUNDS)).toEqual({
    ok: false,
    problem: `A size is more than 0 and at most 1,000${NBSP}mm. Type one in between.`,
  });
});

test('a hole of 51 mm and a place 2 m away are told what may be', () => {
  expect(readLength('51', HOLE_BOUNDS)).toMatchObject({ problem: expect.stringContaining(`50${NBSP}mm`) });
  expect(readLength('2000', PLACE_BOUNDS)).toMatchObject({
    problem: `A place is at most 1,000${NBSP}mm away from the corner. Type one from −1,000 to 1,000${NBSP}mm.`,
  });
});

test.each(['1,000', '12,500 mm', '−1,234,567'])(
  '%s could be thousands or thousandths, and is asked about',
  (typed) => {
    expect(readLength(typed, PLACE_BOUNDS)).toMatchObject({
      problem: 'This can be read in two ways. Type it without a comma, with a point before tenths.',
    });
  },
);

test('what a field shows is read as the same again', () => {
  for (const mm of [1_000, -1_000, 0.01, 237.65, 0, -0.5])
    expect(readLength(mmFigures(mm), PLACE_BOUNDS)).toEqual(ok(mm));
});

test('lengths are told with true minus signs', () => {
  expect(mmWords(-3.5)).toBe(`−3.5${NBSP}mm`);
});
