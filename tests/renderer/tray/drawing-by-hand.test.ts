import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { trayPlaces } from '../../../boards/document/tray-places';
import { FORM_FACTOR_ENTRIES } from '../../../boards/library/form-factors';
import { standoffsFor } from '../../../boards/routing/case/standoffs';
import { firstSize, firstTray } from '../../../renderer/areas/route/tray/first-tray';
import { newPlace } from '../../../renderer/areas/route/tray/new-place';
import { rectOfPlace } from '../../../renderer/canvas/tray/drafted';
import { HANDLES, handleAt, handleUnder, resized } from '../../../renderer/canvas/tray/resize-handles';
import { guidesOnTray, snappedOnTray } from '../../../renderer/canvas/tray/snap-tray';
import { anyMap } from './any-map';

const mm = fc.integer({ min: -3_000, max: 43_000 }).map((hundredths) => hundredths / 100);

describe('what is dragged over the tray', () => {
  it('comes to stand on whole millimetres or level with something, and never further off than the reach', () => {
    fc.assert(
      fc.property(anyMap(), mm, mm, fc.integer({ min: 0, max: 5 }), (tray, x, y, reach) => {
        const [first] = trayPlaces(tray);
        const rect = { x, y, width: 0, height: 0 };
        const id = first?.place.id ?? '';
        const at = snappedOnTray(tray, id, rect, reach);
        expect(Math.abs(at.x - x)).toBeLessThanOrEqual(Math.max(reach, 0.5) + 0.005);
        expect(Math.abs(at.y - y)).toBeLessThanOrEqual(Math.max(reach, 0.5) + 0.005);
        const guides = guidesOnTray(tray, id, { ...rect, ...at });
        for (const [axis, value] of [
          ['x', at.x],
          ['y', at.y],
        ] as const)
          expect(Number.isInteger(value) || guides.some((guide) => guide.axis === axis)).toBe(true);
      }),
      { seed: 52, numRuns: 300 },
    );
  });

  it('is level with the edge of the tray, and not with itself', () => {
    const tray = { widthMm: 300, heightMm: 200, points: [], openings: [], bays: [], paths: [] };
    const rect = { x: 258.4, y: 77.7, width: 40, height: 20 };
    expect(snappedOnTray(tray, 'bay', rect, 2)).toEqual({ x: 260, y: 78 });
    const bay = { id: 'bay', xMm: 33.3, yMm: 44.4, widthMm: 40, heightMm: 20 };
    expect(
      guidesOnTray({ ...tray, bays: [bay] }, 'bay', { x: 33.3, y: 44.4, width: 40, height: 20 }),
    ).toEqual([]);
  });
});

describe('a handle of an area', () => {
  it('moves its own sides and no other, however far it is taken', () => {
    const rect = { x: 100, y: 50, width: 40, height: 20 };
    fc.assert(
      fc.property(fc.constantFrom(...HANDLES), mm, mm, (handle, x, y) => {
        const to = resized(rect, handle, { x, y });
        if (handle.across !== -1) expect(to.x).toBe(rect.x);
        if (handle.across !== 1) expect(to.x + to.width).toBeCloseTo(rect.x + rect.width, 6);
        if (handle.down !== -1) expect(to.y).toBe(rect.y);
        if (handle.down !== 1) expect(to.y + to.height).toBeCloseTo(rect.y + rect.height, 6);
        expect(Math.min(to.width, to.height)).toBeGreaterThan(0.999);
      }),
      { seed: 53, numRuns: 300 },
    );
  });

  it('is the one that lies under the pointer', () => {
    const rect = { x: 100, y: 50, width: 40, height: 20 };
    for (const handle of HANDLES) {
      const { x, y } = handleAt(rect, handle);
      expect(handleUnder(rect, { x: x + 1, y: y - 1 }, 3)).toEqual(handle);
    }
    expect(handleUnder(rect, { x: 120, y: 60 }, 3)).toBeUndefined();
  });
});

describe('a new place', () => {
  it('is drawn from corner to corner, whichever comes first', () => {
    const tray = { widthMm: 300, heightMm: 200, points: [], openings: [], bays: [], paths: [] };
    for (const [from, to] of [
      [
        { x: 10, y: 20 },
        { x: 50, y: 80 },
      ],
      [
        { x: 50, y: 80 },
        { x: 10, y: 20 },
      ],
    ] as const) {
      const place = newPlace(tray, 'opening', from, to);
      expect(place && rectOfPlace(place)).toEqual({ x: 10, y: 20, width: 40, height: 60 });
    }
  });
});

describe('the first tray', () => {
  // Sizes and holes are those of the published papers, as the library has them with their sources.
  it('holds a board of every published size, with a standoff under each of its sure holes and none between', () => {
    for (const { id, outline, doubtful } of FORM_FACTOR_ENTRIES) {
      const size = firstSize(outline);
      expect(size.widthMm).toBeGreaterThan(outline.depthMm);
      expect(size.heightMm).toBeGreaterThan(outline.widthMm);
      const known = standoffsFor(outline, firstTray(size, id));
      if (known.kind !== 'known') throw new Error(known.missing);
      expect(known.without).toEqual(doubtful.map((letter) => letter.toLowerCase()));
    }
  });
});
