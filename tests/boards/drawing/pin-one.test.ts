import { describe, expect, it } from 'vitest';
import { TURNS, type Turn } from '../../../boards/base/units';
import type { Connector } from '../../../boards/document/connector';
import { CORNERS, type Grid, SCHEMES } from '../../../boards/document/grid';
import { blockOf, USUAL_ROOMS } from '../../../boards/drawing/block';
import { centreOf } from '../../../boards/drawing/geometry';
import { measureByTable } from '../../../boards/drawing/measure';
import { orientationOf } from '../../../boards/drawing/orientation';

function header(grid: Grid, turn: Turn = 0): Connector {
  return {
    id: 'j1',
    print: 'J1',
    title: 'header',
    family: 'pin-header',
    grid,
    pins: [],
    place: { xMm: 10, yMm: 20, turn },
  };
}

function drawn(connector: Connector, turn: Turn = 0, mirrored = false) {
  return blockOf(connector, orientationOf({ turn, mirrored }), USUAL_ROOMS, measureByTable);
}

/** The corner of the shell that is cut, told from the middle of the shell. */
function cutCorner(block: ReturnType<typeof drawn>) {
  const middle = centreOf(block.shell);
  const [corner] = block.pinOne;
  return `${corner.y < middle.y ? 'top' : 'bottom'}-${corner.x < middle.x ? 'left' : 'right'}`;
}

/** The corner of the grid where pin 1 is drawn. */
function pinOneCorner(block: ReturnType<typeof drawn>) {
  const pin = block.pins.find(({ pin }) => pin === '1');
  const middle = centreOf(block.shell);
  const at = pin && centreOf(pin.box);
  return at && `${at.y < middle.y ? 'top' : 'bottom'}-${at.x < middle.x ? 'left' : 'right'}`;
}

describe('the cut corner is at pin 1', () => {
  for (const scheme of SCHEMES)
    for (const from of CORNERS)
      it(`counted ${scheme} from the ${from}`, () => {
        const grid: Grid = { rows: 2, cols: 5, pitchMm: 2.54, numbering: { scheme, from } };
        expect(cutCorner(drawn(header(grid)))).toBe(from);
      });

  it('however the connector is turned on the board and the board before the person', () => {
    const grid: Grid = {
      rows: 2,
      cols: 5,
      pitchMm: 2.54,
      numbering: { scheme: 'zig-zag', from: 'bottom-left' },
    };
    for (const onBoard of TURNS)
      for (const turn of TURNS)
        for (const mirrored of [false, true]) {
          const block = drawn(header(grid, onBoard), turn, mirrored);
          expect(cutCorner(block)).toBe(pinOneCorner(block));
        }
  });

  it('on a single row it is at the end where counting begins', () => {
    const grid: Grid = {
      rows: 1,
      cols: 4,
      pitchMm: 2.54,
      numbering: { scheme: 'by-row', from: 'top-right' },
    };
    expect(cutCorner(drawn(header(grid)))).toBe('top-right');
  });

  it('with labels of its own, at the first label', () => {
    const labels = [
      [null, 'A2', 'A3'],
      ['B1', 'B2', 'B3'],
    ];
    const grid: Grid = { rows: 2, cols: 3, pitchMm: 2.54, numbering: { scheme: 'free', labels } };
    const block = drawn(header(grid));
    expect(block.pins.map(({ pin }) => pin)).toEqual(['A2', 'A3', 'B1', 'B2', 'B3']);
    expect(cutCorner(block)).toBe('top-left');
  });
});

describe('true to scale', () => {
  it('pins lie a pitch apart, and where the board sheet says', () => {
    const grid: Grid = {
      rows: 2,
      cols: 5,
      pitchMm: 2,
      rowPitchMm: 3,
      numbering: { scheme: 'by-row', from: 'top-left' },
    };
    const middles = drawn(header(grid, 90)).pins.map(({ pin, box }) => [pin, centreOf(box)] as const);
    expect(middles[0]).toEqual(['1', { x: expect.closeTo(10), y: expect.closeTo(20) }]);
    expect(middles[1]).toEqual(['2', { x: expect.closeTo(10), y: expect.closeTo(22) }]);
    expect(middles[5]).toEqual(['6', { x: expect.closeTo(7), y: expect.closeTo(20) }]);
  });
});
