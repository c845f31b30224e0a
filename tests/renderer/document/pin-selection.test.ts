import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TURNS } from '../../../boards/base/units';
import { gridIndex } from '../../../boards/document/numbering';
import { afterKey } from '../../../renderer/areas/document/connector/grid-keys';
import { layoutOf } from '../../../renderer/areas/document/connector/header-layout';
import {
  endOf,
  everything,
  extendedTo,
  inOrder,
  nothing,
  only,
  type PinSelection,
  settled,
  stepFrom,
  toggled,
} from '../../../renderer/areas/document/connector/selection';
import { arbitraryConnector } from '../../boards/arbitrary-build';
import { grid, posts } from '../../boards/fixtures/bench';

// How cells are chosen by mouse and keys: common practice of tables, no source.

const UPRIGHT = { turn: 0, mirrored: false } as const;
/** 2 4 6 8 10 above 1 3 5 7 9. */
const panel = posts('panel', grid(2, 5, { numbering: { scheme: 'zig-zag', from: 'bottom-left' } }));
const layout = layoutOf(panel, UPRIGHT);
const rowsOf = (view: Parameters<typeof layoutOf>[1]) => {
  const drawn = layoutOf(panel, view);
  return drawn.spots.map((row) => row.map((spot) => drawn.labelAt(spot)).join(' '));
};
const chosenIn = (selection: PinSelection) => [...inOrder(layout, selection)];

describe('a header as it lies', () => {
  it('is drawn in rows and columns of the view, turned and mirrored with the board', () => {
    expect(rowsOf(UPRIGHT)).toEqual(['2 4 6 8 10', '1 3 5 7 9']);
    expect(rowsOf({ turn: 180, mirrored: false })).toEqual(['9 7 5 3 1', '10 8 6 4 2']);
    expect(rowsOf({ turn: 90, mirrored: false })).toEqual(['1 2', '3 4', '5 6', '7 8', '9 10']);
    expect(rowsOf({ turn: 0, mirrored: true })).toEqual(['10 8 6 4 2', '9 7 5 3 1']);
  });

  it('has every position once, in any view', () => {
    fc.assert(
      fc.property(
        arbitraryConnector('one'),
        fc.constantFrom(...TURNS),
        fc.boolean(),
        (connector, turn, mirrored) => {
          const drawn = layoutOf(connector, { turn, mirrored });
          const labels = gridIndex(connector.grid).positions.map(({ label }) => label);
          expect([...drawn.labels].sort()).toEqual([...labels].sort());
          for (const label of labels) {
            expect(drawn.labelAt(drawn.spotOf(label))).toBe(label);
            expect(gridIndex(connector.grid).labelAt(drawn.cellAt(drawn.spotOf(label)))).toBe(label);
          }
        },
      ),
      { seed: 51, numRuns: 200 },
    );
  });
});

describe('choosing pins', () => {
  it('one by one, the last of which stays', () => {
    const two = toggled(only('3'), '8');
    expect(chosenIn(two)).toEqual(['8', '3']);
    expect(two).toMatchObject({ anchor: '8', focus: '8' });
    expect(chosenIn(toggled(two, '3'))).toEqual(['8']);
    expect(chosenIn(toggled(only('3'), '3'))).toEqual(['3']);
  });

  it('by the rectangle between where it began and where it is, whichever way', () => {
    expect(chosenIn(extendedTo(layout, only('3'), '8'))).toEqual(['4', '6', '8', '3', '5', '7']);
    expect(chosenIn(extendedTo(layout, only('8'), '3'))).toEqual(['4', '6', '8', '3', '5', '7']);
    expect(chosenIn(extendedTo(layout, extendedTo(layout, only('3'), '10'), '5'))).toEqual(['3', '5']);
    expect(extendedTo(layout, only('3'), '8')).toMatchObject({ anchor: '3', focus: '8' });
    expect(chosenIn(everything(layout, only('3')))).toHaveLength(10);
  });

  it('leaves out what has no position, and steps over it', () => {
    const labels = [
      ['A', null, null, 'B'],
      ['C', 'D', null, 'E'],
    ];
    const odd = layoutOf(posts('odd', grid(2, 4, { numbering: { scheme: 'free', labels } })), UPRIGHT);
    expect([...extendedTo(odd, only('A'), 'E').chosen]).toEqual(['A', 'B', 'C', 'D', 'E']);
    expect(stepFrom(odd, 'A', 'right')).toBe('B');
    expect(stepFrom(odd, 'D', 'up')).toBe('D');
    expect(endOf(odd, 'D', 'last', false)).toBe('E');
    expect(endOf(odd, 'D', 'first', true)).toBe('A');
  });

  it('a step and the step back come to the same pin, or to the edge', () => {
    const back = { up: 'down', down: 'up', left: 'right', right: 'left' } as const;
    fc.assert(
      fc.property(
        arbitraryConnector('one'),
        fc.constantFrom('up', 'down', 'left', 'right'),
        fc.nat(),
        (connector, way, at) => {
          const drawn = layoutOf(connector, UPRIGHT);
          const label = drawn.labels[at % drawn.labels.length] ?? '';
          const next = stepFrom(drawn, label, way);
          if (next !== label) expect(stepFrom(drawn, next, back[way])).toBe(label);
        },
      ),
      { seed: 52, numRuns: 300 },
    );
  });

  it('begins anew when another pin is chosen from outside, and forgets labels that are no more', () => {
    const several = extendedTo(layout, only('3'), '8');
    expect(settled(layout, several, '8')).toEqual(several);
    expect(settled(layout, several, '5')).toEqual(only('5'));
    expect(settled(layout, several, undefined)).toEqual(nothing('2'));
    const small = layoutOf(posts('panel', grid(1, 3)), UPRIGHT);
    expect(settled(small, several, '8')).toEqual(nothing('1'));
    const gone = { chosen: new Set(['2', '8']), anchor: '2', focus: '2' };
    expect([...settled(small, gone, '2').chosen]).toEqual(['2']);
  });
});

describe('keys in a header', () => {
  const press = (now: PinSelection, key: string, held: { shift?: true; mod?: true } = {}) =>
    afterKey(layout, now, { key, shiftKey: held.shift ?? false, mod: held.mod ?? false });

  it('walk, extend, move the focus alone, take one more, take all', () => {
    expect(press(only('3'), 'ArrowRight')).toEqual(only('5'));
    expect(press(only('3'), 'ArrowUp')).toEqual(only('4'));
    expect(press(only('3'), 'ArrowDown')).toEqual(only('3'));
    expect(press(only('3'), 'End')).toEqual(only('9'));
    expect(press(only('3'), 'Home', { mod: true })).toEqual(only('2'));
    const two = press(only('3'), 'ArrowRight', { shift: true });
    expect(two && chosenIn(two)).toEqual(['3', '5']);
    const moved = press(only('3'), 'ArrowUp', { mod: true });
    expect(moved).toMatchObject({ focus: '4' });
    const more = moved && press(moved, ' ', { mod: true });
    expect(more && chosenIn(more)).toEqual(['4', '3']);
    const all = press(only('3'), 'a', { mod: true });
    expect(all && chosenIn(all)).toHaveLength(10);
    expect(all && press(all, 'Escape')).toEqual(only('3'));
  });

  it('that are for something else are left alone', () => {
    for (const key of ['a', 'Enter', 'Tab', 'Delete', 'PageDown'])
      expect(press(only('3'), key)).toBeUndefined();
  });
});
