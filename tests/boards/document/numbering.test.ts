import { describe, expect, it } from 'vitest';
import { CORNERS, type Corner, type Numbering, SCHEMES } from '../../../boards/document/grid';
import { gridIndex } from '../../../boards/document/numbering';

type Scheme = Exclude<Numbering['scheme'], 'free'>;

/** A layout as it is printed, seen from above: one line a row. */
interface Printed {
  readonly scheme: Scheme;
  readonly from: Corner;
  readonly layout: string;
}

/**
 * The first of each scheme is written from a published figure, the other corners by turning the page:
 * - zig-zag: the 2x5 panel header, Front Panel I/O Connectivity Design Guide v1.3 (2005), Figure 3, top
 *   view: 2 stands above 1, 10 beside 9.
 * - by-row: the 24-pin main connector, microATX specification v1.2, Figure 8: 1 to 12, below them 13 to 24.
 * - u-shaped: the 19-pin USB 3 connector: 1 to 10 along one row, 11 to 20 back along the other, as listed
 *   in a board manual (read in secondary).
 * - by-column: common practice, no source.
 */
const PRINTED: readonly Printed[] = [
  { scheme: 'zig-zag', from: 'bottom-left', layout: '2 4 6 8 10 / 1 3 5 7 9' },
  { scheme: 'zig-zag', from: 'top-left', layout: '1 3 5 7 9 / 2 4 6 8 10' },
  { scheme: 'zig-zag', from: 'top-right', layout: '9 7 5 3 1 / 10 8 6 4 2' },
  { scheme: 'zig-zag', from: 'bottom-right', layout: '10 8 6 4 2 / 9 7 5 3 1' },
  {
    scheme: 'by-row',
    from: 'top-left',
    layout: '1 2 3 4 5 6 7 8 9 10 11 12 / 13 14 15 16 17 18 19 20 21 22 23 24',
  },
  {
    scheme: 'by-row',
    from: 'top-right',
    layout: '12 11 10 9 8 7 6 5 4 3 2 1 / 24 23 22 21 20 19 18 17 16 15 14 13',
  },
  {
    scheme: 'by-row',
    from: 'bottom-left',
    layout: '13 14 15 16 17 18 19 20 21 22 23 24 / 1 2 3 4 5 6 7 8 9 10 11 12',
  },
  {
    scheme: 'by-row',
    from: 'bottom-right',
    layout: '24 23 22 21 20 19 18 17 16 15 14 13 / 12 11 10 9 8 7 6 5 4 3 2 1',
  },
  { scheme: 'u-shaped', from: 'top-left', layout: '1 2 3 4 5 6 7 8 9 10 / 20 19 18 17 16 15 14 13 12 11' },
  { scheme: 'u-shaped', from: 'top-right', layout: '10 9 8 7 6 5 4 3 2 1 / 11 12 13 14 15 16 17 18 19 20' },
  { scheme: 'u-shaped', from: 'bottom-left', layout: '20 19 18 17 16 15 14 13 12 11 / 1 2 3 4 5 6 7 8 9 10' },
  {
    scheme: 'u-shaped',
    from: 'bottom-right',
    layout: '11 12 13 14 15 16 17 18 19 20 / 10 9 8 7 6 5 4 3 2 1',
  },
  { scheme: 'by-column', from: 'top-left', layout: '1 4 7 10 / 2 5 8 11 / 3 6 9 12' },
  { scheme: 'by-column', from: 'top-right', layout: '10 7 4 1 / 11 8 5 2 / 12 9 6 3' },
  { scheme: 'by-column', from: 'bottom-left', layout: '3 6 9 12 / 2 5 8 11 / 1 4 7 10' },
  { scheme: 'by-column', from: 'bottom-right', layout: '12 9 6 3 / 11 8 5 2 / 10 7 4 1' },
];

/** The same connectors drawn standing up: the count still runs along the longer side. */
const STANDING: readonly Printed[] = [
  { scheme: 'zig-zag', from: 'top-left', layout: '1 2 / 3 4 / 5 6 / 7 8 / 9 10' },
  { scheme: 'zig-zag', from: 'bottom-right', layout: '10 9 / 8 7 / 6 5 / 4 3 / 2 1' },
  { scheme: 'u-shaped', from: 'top-left', layout: '1 8 / 2 7 / 3 6 / 4 5' },
  { scheme: 'u-shaped', from: 'bottom-left', layout: '4 5 / 3 6 / 2 7 / 1 8' },
  { scheme: 'by-row', from: 'top-left', layout: '1 2 / 3 4 / 5 6' },
  { scheme: 'by-column', from: 'top-left', layout: '1 4 / 2 5 / 3 6' },
];

/** Rows of one, two or three: where every scheme counts the same, and where a third row turns again. */
const OTHER: readonly Printed[] = [
  { scheme: 'zig-zag', from: 'top-left', layout: '1 2 3 4' },
  { scheme: 'u-shaped', from: 'top-right', layout: '3 2 1' },
  { scheme: 'by-column', from: 'top-left', layout: '1 2 3' },
  { scheme: 'zig-zag', from: 'bottom-left', layout: '3 6 9 / 2 5 8 / 1 4 7' },
  { scheme: 'u-shaped', from: 'top-left', layout: '1 2 3 4 / 8 7 6 5 / 9 10 11 12' },
];

function rowsOf(layout: string): readonly (readonly string[])[] {
  return layout.split(' / ').map((row) => row.split(' '));
}

describe('the numbers of pins', () => {
  it('are checked for every scheme from every corner', () => {
    const checked = PRINTED.map(({ scheme, from }) => `${scheme} ${from}`).sort();
    expect(checked).toEqual(SCHEMES.flatMap((scheme) => CORNERS.map((from) => `${scheme} ${from}`)).sort());
  });

  it.each([...PRINTED, ...STANDING, ...OTHER])('$scheme from $from: $layout', ({ scheme, from, layout }) => {
    const rows = rowsOf(layout);
    const cols = rows[0]?.length ?? 0;
    const { labelAt, cellOf, positions } = gridIndex({
      rows: rows.length,
      cols,
      pitchMm: 2.54,
      numbering: { scheme, from },
    });
    const read = rows.map((row, r) => row.map((_, c) => labelAt([r, c])));
    expect(read).toEqual(rows);
    rows.forEach((row, r) => {
      row.forEach((label, c) => {
        expect(cellOf(label)).toEqual([r, c]);
      });
    });
    const count = rows.length * cols;
    expect(positions.map(({ label }) => label)).toEqual(Array.from({ length: count }, (_, n) => `${n + 1}`));
    expect(labelAt([-1, 0])).toBeUndefined();
    expect(labelAt([0, cols])).toBeUndefined();
    expect(cellOf(`${count + 1}`)).toBeUndefined();
    expect(cellOf('0')).toBeUndefined();
  });

  it('are what the sheet says where they follow no scheme, with gaps that have no position', () => {
    const { labelAt, cellOf, positions } = gridIndex({
      rows: 2,
      cols: 3,
      pitchMm: 2.54,
      numbering: {
        scheme: 'free',
        labels: [
          ['A1', null, 'A2'],
          ['B2', 'B1', null],
        ],
      },
    });
    expect(positions.map(({ label }) => label)).toEqual(['A1', 'A2', 'B2', 'B1']);
    expect(labelAt([0, 1])).toBeUndefined();
    expect(cellOf('B1')).toEqual([1, 1]);
    expect(cellOf('1')).toBeUndefined();
  });
});
