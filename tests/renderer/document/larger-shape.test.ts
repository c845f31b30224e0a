import { expect, it } from 'vitest';
import { labelled, singleRow, thereAndBack, zigZag } from '../../../boards/library/grids';
import { largerShape } from '../../../renderer/areas/document/pin-list/larger-shape';
import { posts } from '../../boards/fixtures/bench';

// How many positions a header of two rows has: common practice, no source.

it('A header grows along its longer side until it has every label of the list', () => {
  expect(largerShape(posts('panel', zigZag(5)), ['11', '12'])).toEqual({ rows: 2, cols: 6 });
  expect(largerShape(posts('panel', zigZag(5)), ['19'])).toEqual({ rows: 2, cols: 10 });
  expect(largerShape(posts('fan', singleRow(3)), ['4'])).toEqual({ rows: 1, cols: 4 });
  expect(largerShape(posts('usb3', thereAndBack(8)), ['20'])).toEqual({ rows: 2, cols: 10 });
  const upright = { ...zigZag(5), rows: 5, cols: 2 };
  expect(largerShape(posts('panel', upright), ['12'])).toEqual({ rows: 6, cols: 2 });
});

it('A header with labels of its own, a list of letters, and one too long for any header are left alone', () => {
  expect(largerShape(posts('panel', labelled(['A1 A2'])), ['3'])).toBeUndefined();
  expect(largerShape(posts('panel', zigZag(5)), ['A1'])).toBeUndefined();
  // No header is made larger by a pin 0, and none smaller.
  expect(largerShape(posts('panel', zigZag(5)), ['0'])).toBeUndefined();
  expect(largerShape(posts('panel', zigZag(5)), ['0', '11'])).toBeUndefined();
  expect(largerShape(posts('panel', zigZag(5)), ['128'])).toEqual({ rows: 2, cols: 64 });
  expect(largerShape(posts('panel', zigZag(5)), ['129'])).toBeUndefined();
});
