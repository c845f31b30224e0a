import { describe, expect, it } from 'vitest';
import { SIDES, type Side } from '../../../../boards/document/connector';
import { FORM_FACTORS, type FormFactor } from '../../../../boards/document/outline';
import type { Standoff } from '../../../../boards/document/tray';
import { formFactorEntry, formFactorOutline, unsureHoles } from '../../../../boards/library/form-factors';
import { standoffGrid } from '../../../../boards/routing/case/standoff-grid';
import { standoffsFor } from '../../../../boards/routing/case/standoffs';
import { PUBLISHED_HOLES_IN } from '../../fixtures/published-holes';

const place = (rear: Side) => ({ xMm: 22, yMm: 14, rear });

function grid(sizes: readonly FormFactor[], rear: Side = 'left', there: readonly Standoff[] = []) {
  const boards = sizes.map(formFactorEntry).map(({ outline }) => ({ outline, unsure: unsureHoles(outline) }));
  return standoffGrid(boards, place(rear), there, (wished) => wished);
}

function letters(standoffs: readonly Standoff[]): string {
  return standoffs
    .map(({ name = '' }) => name)
    .toSorted()
    .join('');
}

describe('the places of standoffs of a case', () => {
  it.each<[readonly FormFactor[], string]>([
    [['atx'], 'ACFGHJKLM'],
    [['micro-atx'], 'BCFHJLM'],
    [['mini-itx'], 'CFHJ'],
    [['atx', 'micro-atx', 'mini-itx'], 'ABCFGHJKLM'],
  ])('for %j are those at %s, each once', (sizes, expected) => {
    expect(letters(grid(sizes))).toBe(expected);
  });

  it('lie where the published holes are, in a case that stands with its rear at the left', () => {
    for (const { id, name = '', xMm, yMm } of grid(FORM_FACTORS)) {
      const [right = 0, rear = 0] = PUBLISHED_HOLES_IN[name] ?? [];
      expect([xMm, yMm]).toEqual([expect.closeTo(22 + rear * 25.4, 1), expect.closeTo(14 + right * 25.4, 1)]);
      expect(id).toBe(`standoff-${name.toLowerCase()}`);
    }
  });

  it('are right for every board of their size, whichever way board and case are turned', () => {
    for (const size of FORM_FACTORS)
      for (const rear of SIDES)
        for (const drawn of SIDES) {
          const tray = {
            ...{ widthMm: 400, heightMm: 420, points: [], openings: [], bays: [], paths: [] },
            board: place(rear),
            standoffs: [...grid([size], rear)],
          };
          const said = standoffsFor(formFactorOutline(size, drawn), tray);
          if (said.kind === 'unknown') throw new Error(said.missing);
          expect(said.uses.map(({ kind }) => kind)).toEqual(tray.standoffs.map(() => 'set'));
          expect(said.without).toEqual(size === 'micro-atx' ? ['r', 's'] : []);
        }
  });

  it('are not added where the tray has one, be it measured a little beside', () => {
    const [c] = grid(['mini-itx']);
    const measured = { id: 'mine', xMm: (c?.xMm ?? 0) + 1, yMm: (c?.yMm ?? 0) - 1 };
    expect(letters(grid(['atx'], 'left', [measured]))).toBe('AFGHJKLM');
    expect(grid(['atx'], 'left', grid(['atx']))).toEqual([]);
  });
});
