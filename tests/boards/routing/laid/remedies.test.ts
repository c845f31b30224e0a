import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { passageProblem } from '../../../../boards/routing/fill/fill';
import type { Cable, CableKind, Laying } from '../../../../boards/routing/fill/laying';
import { type Remedy, remediesFor } from '../../../../boards/routing/laid/remedies';
import { reachOf } from '../../../../boards/routing/search/reach';
import { everyWay } from '../../../reference/every-route';
import { anyTray } from '../any-tray';

/** True where some way of all there are leaves the slack: by trying every way, whatever the search says. */
function reachesByTrying(tray: Laying, cable: Cable, kind: CableKind, open: readonly string[] = []): boolean {
  const through = (id: string) => {
    const opening = tray.openings.find((each) => each.id === id);
    if (opening === undefined) return false;
    return open.includes(id) || passageProblem(opening, kind, tray.behindMm) === undefined;
  };
  const most = cable.lengthMm - 2 * kind.slackMm;
  return everyWay(tray, cable, through).some(({ totalMm }) => totalMm <= most);
}

/** Openings that everything goes through, and hardly any room behind the tray. */
function wideButShallow(tray: Laying): Laying {
  const openings = tray.openings.map((each) => ({ ...each, widthMm: 40, heightMm: 30 }));
  return { ...tray, behindMm: 9, openings };
}

describe('what would help a cable that does not reach', () => {
  it('helps when every way is tried, and no smaller change of its kind does, on 3,000 random trays', () => {
    const seen: Record<Remedy['kind'], number> = {
      'other-way': 0,
      'less-slack': 0,
      extension: 0,
      openings: 0,
      'tighter-bend': 0,
      'other-bay': 0,
    };
    fc.assert(
      fc.property(anyTray(1), fc.boolean(), (plain, wide) => {
        const tray = wide ? wideButShallow(plain) : plain;
        const [cable] = tray.cables;
        const kind = tray.cableKinds.find(({ id }) => id === cable?.kind);
        if (cable === undefined || kind === undefined) throw new Error('A tray without a cable');
        const remedies = remediesFor(tray, cable);
        for (const remedy of remedies) {
          seen[remedy.kind] += 1;
          expect(remedy.route.spareMm).toBeGreaterThanOrEqual(0);
          switch (remedy.kind) {
            case 'other-way':
              expect(reachesByTrying(tray, cable, kind)).toBe(true);
              break;
            case 'less-slack': {
              const { slackMm } = remedy;
              expect(slackMm).toBeLessThan(kind.slackMm);
              expect(reachesByTrying(tray, cable, { ...kind, slackMm })).toBe(true);
              expect(reachesByTrying(tray, cable, { ...kind, slackMm: slackMm + 1 })).toBe(false);
              break;
            }
            case 'extension': {
              const longer = (by: number) => ({ ...cable, lengthMm: cable.lengthMm + by });
              expect(reachesByTrying(tray, longer(remedy.byMm), kind)).toBe(true);
              expect(reachesByTrying(tray, longer(remedy.byMm - 1), kind)).toBe(false);
              break;
            }
            case 'openings': {
              const open = remedy.openings.map(({ opening }) => opening);
              expect(open.length).toBeGreaterThan(0);
              expect(reachesByTrying(tray, cable, kind, open)).toBe(true);
              expect(reachesByTrying(tray, cable, kind)).toBe(false);
              break;
            }
            case 'tighter-bend': {
              const { bendRadiusMm } = remedy;
              expect(bendRadiusMm).toBeLessThan(kind.bendRadiusMm ?? 0);
              expect(reachesByTrying(tray, cable, { ...kind, bendRadiusMm })).toBe(true);
              expect(reachesByTrying(tray, cable, { ...kind, bendRadiusMm: bendRadiusMm + 1 })).toBe(false);
              break;
            }
            case 'other-bay':
              expect(remedy.bay).not.toBe(cable.to);
              expect(reachesByTrying(tray, { ...cable, to: remedy.bay }, kind)).toBe(true);
          }
        }
        const nothing =
          reachOf(tray, cable).kind === 'no-way' && everyWay(tray, cable, () => true).length === 0;
        if (nothing) expect(remedies.filter(({ kind: what }) => what !== 'other-bay')).toEqual([]);
      }),
      { numRuns: 3_000, seed: 11 },
    );
    for (const [name, count] of Object.entries(seen)) expect(count, name).toBeGreaterThan(10);
  });
});
