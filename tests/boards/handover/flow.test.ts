import fc from 'fast-check';
import { expect, test } from 'vitest';
import { flow, gap, type Piece, type Strip } from '../../../boards/handover/page/flow';

const BODY = { x: 10, y: 20, width: 100, height: 50 };

function strip(heightMm: number): Strip {
  return { heightMm, draw: () => [] };
}

function line(heightMm: number, head?: Strip): Piece {
  return { kind: 'strip', strip: strip(heightMm), ...(head && { head }) };
}

test('What does not fit on a page begins the next', () => {
  const { pages } = flow([line(30), line(15), line(10)], () => BODY);
  expect(pages.map((page) => page.map(({ at }) => at.y))).toEqual([[20, 50], [20]]);
});

test('The head of a table stands again above the rows on the next page', () => {
  const head = strip(5);
  const { pages } = flow([{ kind: 'strip', strip: head }, line(40, head), line(20, head)], () => BODY);
  expect(pages[1]?.map(({ strip: { heightMm }, at }) => [heightMm, at.y])).toEqual([
    [5, 20],
    [20, 25],
  ]);
});

test('What stands beside a drawing begins at its top, and what follows both stands below both', () => {
  const { pages } = flow(
    [{ kind: 'float', strip: strip(30) }, line(10), { kind: 'clear' }, line(5)],
    () => BODY,
  );
  expect(pages[0]?.map(({ at }) => at.y)).toEqual([20, 20, 50]);
});

test('Room between things is not carried over to the top of the next page', () => {
  const { pages } = flow([line(45), gap(7), line(10)], () => BODY);
  expect(pages.map((page) => page.map(({ at }) => at.y))).toEqual([[20], [20]]);
});

test('What has to stay together goes to the next page together, and its mark with it', () => {
  const { pages, marks } = flow(
    [line(30), { kind: 'keep', heightMm: 25 }, { kind: 'mark', mark: 'part' }, line(20), line(5)],
    () => BODY,
  );
  expect(pages.map((page) => page.length)).toEqual([1, 2]);
  expect(marks.get('part')).toBe(2);
});

test('What goes to the next page together has the head of its table above it too', () => {
  const head = strip(5);
  const keep: Piece = { kind: 'keep', heightMm: 25 };
  const { pages } = flow([line(30), keep, line(20, head), line(5, head)], () => BODY);
  expect(pages[1]?.map(({ strip: { heightMm }, at }) => [heightMm, at.y])).toEqual([
    [5, 20],
    [20, 25],
    [5, 45],
  ]);
});

test('No head is laid over a drawing that a page begins with', () => {
  const float: Piece = { kind: 'float', strip: strip(20) };
  const { pages } = flow([line(30), { kind: 'keep', heightMm: 25 }, float, line(10, strip(5))], () => BODY);
  expect(pages[1]?.map(({ strip: { heightMm }, at }) => [heightMm, at.y])).toEqual([
    [20, 20],
    [10, 20],
  ]);
});

test('Of any pieces none is lost, none lies on another, and none that fits a page runs over its foot', () => {
  const heights = fc.array(fc.integer({ min: 1, max: 70 }), { minLength: 1, maxLength: 40 });
  fc.assert(
    fc.property(heights, (mm) => {
      const { pages } = flow(
        mm.map((height) => line(height)),
        () => BODY,
      );
      expect(pages.flat().map(({ strip: { heightMm } }) => heightMm)).toEqual(mm);
      for (const page of pages) {
        let y = BODY.y;
        for (const { strip: laid, at } of page) {
          expect(at.y).toBe(y);
          y += laid.heightMm;
        }
        const tooHigh = page.length === 1 && (page[0]?.strip.heightMm ?? 0) > BODY.height;
        expect(y <= BODY.y + BODY.height || tooHigh).toBe(true);
      }
    }),
  );
});
