import { describe, expect, test } from 'vitest';
import { numbersOf } from '../../../../boards/findings/finding-numbers';
import { wordsOf } from '../../../../boards/findings/words';
import { bench } from '../harness';

/** Hole C stands 6.45 in from the right and 0.4 in from the rear edge of every size (two public drawing scripts agree). */
const C = { id: 'c', name: 'C', xMm: 0.4 * 25.4, yMm: 6.45 * 25.4 };

describe('a standoff near a hole of the board', () => {
  test('is a doubt where it stands 4 mm beside: the place is measured wrong, or its head touches the board', () => {
    const beside = bench().tray('atx', { ...C, xMm: C.xMm + 4 });
    const found = beside.finding('standoff-beside-hole');
    expect(found).toMatchObject({ severity: 'doubt', data: { standoff: 'c', hole: 'c' } });
    expect(numbersOf(found).byMm).toBeCloseTo(4, 1);
    expect(wordsOf(found, beside.build)).toMatchObject({
      title: 'Standoff\u00a0C is not right under a hole of the board.',
      reason: expect.stringContaining('4.0\u00a0mm away from hole\u00a0C'),
    });
  });

  test('is right as far as a ruler can tell', () => {
    expect(
      bench()
        .tray('atx', { ...C, xMm: C.xMm + 1.5 })
        .codes(),
    ).toEqual([]);
  });

  test('can be noted to be out, unless it cannot be taken out', () => {
    const said = (over: object) =>
      bench()
        .tray('atx', { ...C, ...over, xMm: C.xMm + 4 })
        .finding('standoff-beside-hole')
        .remedies.map(({ text }) => text);
    expect(said({})).toEqual([
      'Measure the standoff and the hole again.',
      'Look there, and note that the place is empty.',
    ]);
    expect(said({ fixed: true })).toEqual(['Measure the standoff and the hole again.']);
  });
});
