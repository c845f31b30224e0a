import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CaseSheet } from '../../../../boards/document/case-sheet';
import { compareCases } from '../../../../boards/edit/compare/compare-cases';
import { mergeCases } from '../../../../boards/edit/compare/merge-cases';
import type { Take } from '../../../../boards/edit/compare/taking';
import { arbitraryCase } from '../../arbitrary-build';
import { bench, grid, partLead } from '../../fixtures/bench';

const power = partLead('power-sw', 'power-switch', grid(1, 2), { a: '1', b: '2' });
const reset = partLead('reset-sw', 'reset-switch', grid(1, 2), { a: '1', b: '2' });
const sheet = (...leads: readonly (typeof power)[]): CaseSheet => bench([], leads).case;

function merged(mine: CaseSheet, theirs: CaseSheet, take: Take): CaseSheet {
  const result = mergeCases(compareCases(mine, theirs), () => take);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

const bare = ({ leads }: CaseSheet) => leads.map(({ id: _, ...lead }) => lead);

describe('two sheets of a case', () => {
  it('differ lead by lead', () => {
    const theirs = sheet(
      { ...power, wires: power.wires.slice(0, 1) },
      { ...reset, id: 'other', name: 'Other' },
    );
    const told = compareCases(sheet(power, reset), theirs).leads.map(({ key, fields }) => [key, ...fields]);
    expect(told).toEqual([
      ['lead power-sw', 'wires'],
      ['lead reset-sw', 'lead'],
      ['lead +other', 'lead'],
    ]);
  });

  it('lay leads of one name over each other, whatever id they have', () => {
    const theirs = sheet({ ...power, id: 'lead-4' });
    expect(compareCases(sheet(power), theirs).leads.map(({ fields }) => fields)).toEqual([[]]);
  });

  it('merged with both, hang every lead of either in the case, each with an id of its own', () => {
    fc.assert(
      fc.property(arbitraryCase, arbitraryCase, (mine, theirs) => {
        const both = merged(mine, theirs, 'both');
        const ids = both.leads.map(({ id }) => id);
        expect(ids).toEqual([...new Set(ids)]);
        for (const lead of [...bare(mine), ...bare(theirs)]) expect(bare(both)).toContainEqual(lead);
      }),
      { seed: 77, numRuns: 300 },
    );
  });

  it('merged with theirs of every row are theirs, with mine of every row mine', () => {
    fc.assert(
      fc.property(arbitraryCase, arbitraryCase, (mine, theirs) => {
        expect(merged(mine, theirs, 'mine')).toEqual(mine);
        const taken = bare(merged(mine, theirs, 'theirs')).map((lead) => JSON.stringify(lead));
        expect(taken.sort()).toEqual(
          bare(theirs)
            .map((lead) => JSON.stringify(lead))
            .sort(),
        );
      }),
      { seed: 78, numRuns: 300 },
    );
  });

  it('differ in their trays as in any other field, told in few words however much is in them', () => {
    const tray = {
      widthMm: 400,
      heightMm: 420,
      points: Array.from({ length: 300 }, (_, at) => ({
        id: `tie-${at}`,
        kind: 'tie' as const,
        xMm: at,
        yMm: 1,
      })),
      ...{ openings: [], bays: [], paths: [] },
    };
    const [mine, theirs] = [
      { ...sheet(power), tray: { ...tray, widthMm: 380 } },
      { ...sheet(power), tray },
    ];
    expect(compareCases(mine, theirs).fields.map(({ field }) => field)).toEqual(['tray']);
    expect(merged(mine, theirs, 'theirs').tray).toEqual(tray);
    const both = merged(mine, theirs, 'both');
    expect(both.tray).toEqual(mine.tray);
    expect(both.notes).toContain('400\u00a0×\u00a0420\u00a0mm, points 300 entries, openings none');
  });
});
