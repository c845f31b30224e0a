import { expect, it } from 'vitest';
import { readPinList } from '../../../../boards/pinout/pin-list/pin-list';
import { HELD_OUT } from './held-out';

/**
 * Of 123 pins the reader understood 110 when it was first run on these lists. What it missed were two faults of
 * its own, in a row of two labels and in "IntA_P1_D-"; both were mended, so that the rate today is no longer one
 * of lists that were never seen.
 */
const FIRST_RATE = 110 / 123;

it('Ten lists in the manner of as many manuals are understood at no less than the rate of the first run', () => {
  const read = HELD_OUT.flatMap(({ text, grid, meant }) => {
    const result = readPinList(text, { grid });
    const pins = result.ok ? result.value.pins : [];
    return Object.entries(meant).map(([label, is]) => {
      const pin = pins.find((each) => each.label === label);
      return (pin?.missing ? 'no pin' : pin?.signal) === is;
    });
  });
  expect(read).toHaveLength(123);
  expect(read.filter((right) => right).length / read.length).toBeGreaterThanOrEqual(FIRST_RATE);
});
