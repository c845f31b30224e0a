import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Opening } from '../../../../boards/document/tray';
import {
  fillLimit,
  fillOf,
  openAreaMm2,
  overfillOf,
  passageProblem,
  roomFor,
} from '../../../../boards/routing/fill/fill';

const slot: Opening = { id: 'slot', xMm: 0, yMm: 0, widthMm: 60, heightMm: 25, edge: 'grommet' };
const round: Opening = { ...slot, id: 'round', widthMm: 20, heightMm: 20, round: true };

const anyDiameters = fc.array(
  fc.integer({ min: 10, max: 200 }).map((tenths) => tenths / 10),
  {
    maxLength: 8,
  },
);

describe('the fill of an opening', () => {
  it('is what part of its area the cables take', () => {
    expect(openAreaMm2(slot)).toBe(1500);
    expect(openAreaMm2(round)).toBeCloseTo(Math.PI * 100, 9);
    expect(fillOf(round, [10])).toBeCloseTo(0.25, 12);
    expect(fillOf(round, [10, 10, 10, 10, 10])).toBeCloseTo(1.25, 12);
  });

  it('may be 53 % for one cable, 31 % for two, 40 % for more (NEC chapter 9, table 1)', () => {
    expect([1, 2, 3, 4, 20].map(fillLimit)).toEqual([0.53, 0.31, 0.4, 0.4, 0.4]);
  });

  it('is the same as in conduit: the diameters that just go through a round opening of 20 mm', () => {
    const widest = (cables: number) => 20 * Math.sqrt(fillLimit(cables) / cables);
    for (const cables of [1, 2, 5]) {
      const all = (diameterMm: number) => Array.from({ length: cables }, () => diameterMm);
      expect(roomFor(round, all(widest(cables) * 0.999)), `${cables}`).toBe(true);
      expect(roomFor(round, all(widest(cables) * 1.001)), `${cables}`).toBe(false);
    }
  });

  it('is not kept to by two cables only because there is a third', () => {
    const [thick, thin] = [20 * Math.sqrt(0.18), 1];
    expect(fillOf(round, [thick, thick, thin])).toBeLessThan(0.4);
    expect(roomFor(round, [thick, thick, thin])).toBe(false);
    const over = { cables: 2, fill: fillOf(round, [thick, thick]), limit: 0.31 };
    expect(overfillOf(round, [thin, thick, thick])).toEqual(over);
  });

  it('leaves room for any of the cables where it has room for all, whatever their order', () => {
    fc.assert(
      fc.property(anyDiameters, fc.nat(), (diametersMm, left) => {
        const fits = roomFor(slot, diametersMm);
        expect(roomFor(slot, diametersMm.toReversed())).toBe(fits);
        const fewer = diametersMm.toSpliced(left % Math.max(1, diametersMm.length), 1);
        if (fits) expect(roomFor(slot, fewer)).toBe(true);
        if (fits) expect(fillOf(slot, diametersMm)).toBeLessThanOrEqual(fillLimit(diametersMm.length) + 1e-9);
      }),
    );
  });
});

describe('a cable at an opening', () => {
  const kind = { id: 'main', diameterMm: 12, bendRadiusMm: 10, slackMm: 20 };

  it('goes through where it is not thicker than the opening is narrow', () => {
    expect(passageProblem(slot, { ...kind, diameterMm: 25 })).toBeUndefined();
    expect(passageProblem(slot, { ...kind, diameterMm: 25.1 })).toEqual({
      code: 'too-narrow',
      diameterMm: 25.1,
      narrowMm: 25,
    });
  });

  it('does not fill more than one cable may', () => {
    expect(passageProblem(round, { ...kind, diameterMm: 14.5 })).toBeUndefined();
    expect(passageProblem(round, { ...kind, diameterMm: 15 })).toEqual({
      code: 'too-full',
      fill: fillOf(round, [15]),
      limit: 0.53,
    });
  });

  it('needs its bend and its own thickness behind the tray, where both are known', () => {
    expect(passageProblem(slot, kind, 22)).toBeUndefined();
    expect(passageProblem(slot, kind, 21)).toEqual({ code: 'too-stiff', neededMm: 22, behindMm: 21 });
  });

  it('needs at least its own thickness behind the tray, though nobody has said how it bends', () => {
    const unbent = { id: 'main', diameterMm: 12, slackMm: 20 };
    const tooThick = { code: 'too-thick', diameterMm: 12, behindMm: 5 };
    expect(passageProblem(slot, unbent, 12)).toBeUndefined();
    expect(passageProblem(slot, unbent)).toBeUndefined();
    expect([passageProblem(slot, unbent, 5), passageProblem(slot, kind, 5)]).toEqual([tooThick, tooThick]);
  });
});
