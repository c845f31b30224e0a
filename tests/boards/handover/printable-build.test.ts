import { expect, it } from 'vitest';
import { printableBuild } from '../../../boards/handover/bench-sheet/printable-build';
import { demo } from '../findings/demo';
import { bench } from '../findings/harness';

/** Letters, dashes and quotation marks, and no signs of the east. */
const PLAIN = { has: (code: number) => code < 0x2300 };

it('Names of places of the tray that the fonts have no letters for are marked, wherever they stand', () => {
  const { build } = bench().tray('atx');
  const { tray } = build.case;
  if (!tray) throw new Error('No tray');
  const place = { id: 'p', name: '前' };
  const named = {
    ...tray,
    points: [{ ...place, kind: 'tie' as const, xMm: 1, yMm: 1 }],
    openings: [{ ...place, id: 'o', xMm: 1, yMm: 1, widthMm: 9, heightMm: 9, edge: 'bare' as const }],
    bays: [{ ...place, id: 'b', xMm: 1, yMm: 1, widthMm: 9, heightMm: 9 }],
    standoffs: [{ ...place, id: 's', xMm: 5, yMm: 5 }],
    fans: [{ ...place, id: 'f', wall: 'front' as const }],
  };
  const { build: shown, replaced } = printableBuild(
    { ...build, case: { ...build.case, tray: named } },
    PLAIN,
  );
  expect(replaced).toBe(true);
  expect(JSON.stringify(shown.case.tray)).not.toContain('前');
  expect(JSON.stringify(shown.case.tray).match(/▯/g)).toHaveLength(5);
});

it('A build of letters that the fonts have is printed as it is', () => {
  expect(printableBuild(demo('wired'), PLAIN).replaced).toBe(false);
});
