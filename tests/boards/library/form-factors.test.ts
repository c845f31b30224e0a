import { describe, expect, it } from 'vitest';
import { SIDES } from '../../../boards/document/connector';
import { FORM_FACTORS, type MountingHole, OutlineZ } from '../../../boards/document/outline';
import {
  FORM_FACTOR_ENTRIES,
  formFactorEntry,
  formFactorOutline,
  resizedOutline,
  turnedOutline,
  unsureHoles,
} from '../../../boards/library/form-factors';
import { MEMORY, SECONDARY, SOURCE } from './published';

const MM_PER_INCH = 25.4;

/** Largest width and depth, in millimetres as the papers print them beside the inches. */
const SIZES = [
  // microATX Motherboard Interface Specification v1.2, 2004, Table 3.
  ['atx', 305, 244],
  ['micro-atx', 244, 244],
  // Mini-ITX Addendum v1.1 to the microATX specification, Table 1.
  ['mini-itx', 170, 170],
] as const;

/** Letters: microATX specification v1.2, Figure 2; for Mini-ITX from an account of its addendum. */
const LETTERS = [
  ['atx', 'A C F G H J K L M'],
  ['micro-atx', 'B C F H J L M R S'],
  ['mini-itx', 'C F H J'],
] as const;

/**
 * Distances in inches along the rear edge and away from it. Between C, F, H and J two public drawing scripts
 * agree; the others are those of the first script. That column A stands 0.65 in from the left edge of an
 * ATX board, and the rows 6.1 and 8.95 in from each other, is also in the ATX specification 2.2 (from memory).
 */
const DISTANCES = [
  ['atx', 'C', 'F', 6.2, 0.9],
  ['atx', 'C', 'H', 0, 6.1],
  ['atx', 'F', 'J', 0, 5.2],
  ['atx', 'A', 'C', 4.9, 0],
  ['atx', 'A', 'F', 11.1, 0.9],
  ['atx', 'A', 'K', 0, 8.95],
  ['atx', 'G', 'H', 4.9, 0],
  ['atx', 'H', 'J', 6.2, 0],
  ['atx', 'L', 'M', 6.2, 0],
  ['micro-atx', 'B', 'C', 1.8, 0],
  ['micro-atx', 'C', 'F', 6.2, 0.9],
  ['micro-atx', 'C', 'L', 0, 8.95],
  ['micro-atx', 'R', 'S', 0.8, 0],
  ['micro-atx', 'B', 'S', 0, 6.1],
  ['mini-itx', 'C', 'F', 6.2, 0.9],
  ['mini-itx', 'C', 'H', 0, 6.1],
  ['mini-itx', 'F', 'J', 0, 5.2],
  ['mini-itx', 'H', 'J', 6.2, 0],
] as const;

function holesOf(id: (typeof FORM_FACTORS)[number]): readonly MountingHole[] {
  return formFactorEntry(id).outline.holes ?? [];
}

function hole(id: (typeof FORM_FACTORS)[number], letter: string): MountingHole {
  const found = holesOf(id).find(({ label }) => label === letter);
  if (found === undefined) throw new Error(`No hole ${letter}`);
  return found;
}

describe('the published board sizes', () => {
  it('are all there, each a sound outline that names itself', () => {
    expect(FORM_FACTOR_ENTRIES.map(({ id }) => id)).toEqual([...FORM_FACTORS]);
    for (const { id, outline } of FORM_FACTOR_ENTRIES)
      expect(OutlineZ.parse(outline)).toMatchObject({ formFactor: id });
  });

  it.each(SIZES)('%s is at most %d by %d mm', (id, widthMm, depthMm) => {
    expect(formFactorEntry(id).outline).toMatchObject({ widthMm, depthMm });
  });

  it.each(LETTERS)('%s has the holes %s', (id, letters) => {
    expect(
      holesOf(id)
        .map(({ label }) => label)
        .join(' '),
    ).toBe(letters);
  });

  it.each(DISTANCES)('%s: from %s to %s it is %d in across and %d in deep', (id, from, to, across, deep) => {
    const [a, b] = [hole(id, from), hole(id, to)];
    expect(Math.abs(b.xMm - a.xMm) / MM_PER_INCH).toBeCloseTo(across, 3);
    expect(Math.abs(b.yMm - a.yMm) / MM_PER_INCH).toBeCloseTo(deep, 3);
  });

  it('puts column A of an ATX board 0.65 in from its left edge (ATX specification 2.2, from memory)', () => {
    // 12 in are 304.8 mm and are printed as 305: the rounding stays at the left edge.
    expect(Math.abs(hole('atx', 'A').xMm / MM_PER_INCH - 0.65)).toBeLessThan(0.2 / MM_PER_INCH + 1e-9);
  });

  it('share the rear right corner, so that a small board stands on the same screws as a large one', () => {
    for (const letter of ['C', 'F', 'H', 'J'])
      for (const id of FORM_FACTORS) {
        const { widthMm } = formFactorEntry(id).outline;
        const large = formFactorEntry('atx').outline.widthMm;
        expect(widthMm - hole(id, letter).xMm).toBeCloseTo(large - hole('atx', letter).xMm, 6);
        expect(hole(id, letter).yMm).toBe(hole('atx', letter).yMm);
      }
  });

  it('have every hole wholly inside the edge', () => {
    for (const { outline } of FORM_FACTOR_ENTRIES)
      for (const { xMm, yMm, diameterMm = 0 } of outline.holes ?? []) {
        const radius = diameterMm / 2;
        expect(Math.min(xMm, yMm)).toBeGreaterThan(radius);
        expect(xMm).toBeLessThan(outline.widthMm - radius);
        expect(yMm).toBeLessThan(outline.depthMm - radius);
      }
  });

  it('drawn with the rear at the left, as many manuals do, have the sockets’ corner at the top left', () => {
    const { outline } = formFactorEntry('atx');
    const lying = turnedOutline(outline, 'left');
    expect(lying).toMatchObject({ widthMm: 244, depthMm: 305, rear: 'left', formFactor: 'atx' });
    const f = lying.holes?.find(({ label }) => label === 'F');
    // F stands 0.25 in from the right and 1.3 in from the rear.
    expect([f?.xMm, f?.yMm].map((mm = 0) => mm / MM_PER_INCH)).toEqual(
      [1.3, 0.25].map((i) => expect.closeTo(i, 3)),
    );
  });

  it('are as before after four quarters, and a quarter at a time comes to the same', () => {
    for (const { outline } of FORM_FACTOR_ENTRIES) {
      const round = [...SIDES.slice(1), SIDES[0]].reduce(turnedOutline, outline);
      expect(round).toEqual({ ...outline, rear: 'top' });
      for (const side of SIDES) {
        expect(turnedOutline(turnedOutline(outline, 'right'), side)).toEqual(turnedOutline(outline, side));
        expect(formFactorOutline(outline.formFactor ?? 'atx', side)).toEqual(turnedOutline(outline, side));
      }
    }
  });

  it.each(SIDES)(
    'keep the holes’ distances from the rear corner when a board is smaller, rear at the %s',
    (side) => {
      const full = formFactorOutline('micro-atx', side);
      const less = { widthMm: full.widthMm - 20, depthMm: full.depthMm - 30 };
      const small = turnedOutline(resizedOutline(full, less), 'top');
      const whole = turnedOutline(full, 'top');
      whole.holes?.forEach((hole, at) => {
        const kept = small.holes?.[at] ?? hole;
        expect(small.widthMm - kept.xMm).toBeCloseTo(whole.widthMm - hole.xMm, 6);
        expect(kept.yMm).toBeCloseTo(hole.yMm, 6);
      });
    },
  );

  it.each(SIDES)('have unsure holes until these are measured, rear at the %s', (side) => {
    const micro = formFactorOutline('micro-atx', side);
    expect(unsureHoles(micro)).toEqual(['r', 's']);
    expect(unsureHoles(resizedOutline(micro, { widthMm: 220, depthMm: 230 }))).toEqual(['r', 's']);
    const measured = micro.holes?.map((each) => (each.id === 'r' ? { ...each, xMm: each.xMm + 1.5 } : each));
    expect(unsureHoles({ ...micro, ...(measured && { holes: measured }) })).toEqual(['s']);
    expect(unsureHoles(formFactorOutline('atx', side))).toEqual([]);
    const { formFactor: _, ...free } = micro;
    expect(unsureHoles(free)).toEqual([]);
  });

  it('leave free holes where they are when the size changes', () => {
    const free = { widthMm: 100, depthMm: 80, holes: [{ id: 'a', xMm: 5, yMm: 6 }] };
    expect(resizedOutline(free, { widthMm: 90, depthMm: 70 })).toEqual({ ...free, widthMm: 90, depthMm: 70 });
  });

  it('say how each statement was come by: read, told by others, from memory, doubtful', () => {
    const atx = formFactorEntry('atx');
    expect([atx.size, atx.letters, atx.places, atx.diameter].map(({ confidence }) => confidence)).toEqual([
      SOURCE,
      SOURCE,
      SECONDARY,
      MEMORY,
    ]);
    expect(atx.diameter.source.where).toContain('(from memory)');
    expect(formFactorEntry('mini-itx').letters.confidence).toBe(SECONDARY);
    expect(FORM_FACTOR_ENTRIES.map(({ doubtful }) => doubtful.join(' '))).toEqual(['', 'R S', '']);
  });
});
