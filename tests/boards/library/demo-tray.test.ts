import { describe, expect, it } from 'vitest';
import { standoffsFor } from '../../../boards/routing/case/standoffs';
import { trayGraph } from '../../../boards/routing/search/tray-graph';
import { board, sheet } from './demo-files';

const tray = sheet.tray;
if (tray === undefined) throw new Error('The reading-room case has a tray');
const areas = [...tray.openings, ...tray.bays, ...(tray.supply ? [tray.supply] : [])];

describe('the tray of the reading-room case', () => {
  it('has nothing in one place with something else, and nothing beyond its edge', () => {
    const { widthMm, heightMm } = tray;
    for (const { id, ...area } of areas) {
      const inside =
        area.xMm >= 0 &&
        area.yMm >= 0 &&
        area.xMm + area.widthMm <= widthMm &&
        area.yMm + area.heightMm <= heightMm;
      expect([id, inside]).toEqual([id, true]);
    }
    const apart = areas.flatMap((one, at) =>
      areas
        .slice(at + 1)
        .filter(
          (other) =>
            one.xMm < other.xMm + other.widthMm &&
            other.xMm < one.xMm + one.widthMm &&
            one.yMm < other.yMm + other.heightMm &&
            other.yMm < one.yMm + one.heightMm,
        )
        .map((other) => `${one.id} ${other.id}`),
    );
    expect(apart).toEqual([]);
  });

  it('lets every place be come to from every other', () => {
    const { steps, nodeOf } = trayGraph(tray);
    const met = new Set([nodeOf.get('supply') ?? -1]);
    for (const node of met) for (const { to } of steps[node] ?? []) met.add(to);
    expect([...nodeOf].filter(([, node]) => !met.has(node))).toEqual([]);
  });

  it('has no path shorter than the straight way between the nearest edges of its places', () => {
    const boxOf = (id: string) => {
      const point = tray.points.find((each) => each.id === id);
      if (point) return { ...point, widthMm: 0, heightMm: 0 };
      const area = areas.find((each) => each.id === id);
      if (area === undefined) throw new Error(`No place ${id}`);
      return area;
    };
    const short = tray.paths.filter(({ from, to, lengthMm }) => {
      const [a, b] = [boxOf(from), boxOf(to)];
      const gap = (one: number, size: number, other: number, otherSize: number) =>
        Math.max(other - one - size, one - other - otherSize, 0);
      return (
        Math.hypot(gap(a.xMm, a.widthMm, b.xMm, b.widthMm), gap(a.yMm, a.heightMm, b.yMm, b.heightMm)) >
        lengthMm
      );
    });
    expect(short).toEqual([]);
  });

  it('has a standoff under every hole of the bench board but one, and none that would short it', () => {
    const known = standoffsFor(board.outline, tray, ['r', 's']);
    if (known.kind !== 'known') throw new Error(known.missing);
    expect(known.uses.map(({ kind }) => kind)).toEqual(known.uses.map(() => 'set'));
    expect(known.without).toEqual(['s']);
    expect(known.findings.filter(({ level }) => level === 'danger')).toEqual([]);
  });
});
