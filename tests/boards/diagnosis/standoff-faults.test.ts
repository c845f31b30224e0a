import { describe, expect, it } from 'vitest';
import { faultsAsWritten } from '../../../boards/diagnosis/faults/as-written';
import { faultsOf } from '../../../boards/diagnosis/faults/faults';
import { SUPPLY_FAULTS } from '../../../boards/diagnosis/faults/supply-faults';
import type { Build } from '../../../boards/document/build';
import type { Standoff } from '../../../boards/document/tray';
import { bench } from '../findings/harness';

/**
 * Places B and C stand 8.25 in and 6.45 in from the right and 0.4 in from the rear edge (a public drawing script).
 * Neither B is a hole of an ATX board, nor is it of a mini-ITX board, under which it does not lie; C is one of all
 * (microATX Motherboard Interface Specification v1.2, 2004, Figure 2).
 */
const B = { id: 'b', name: 'B', xMm: 0.4 * 25.4, yMm: 8.25 * 25.4 };
const C = { id: 'c', name: 'C', xMm: 0.4 * 25.4, yMm: 6.45 * 25.4 };
const MIDDLE = { id: 'm', name: 'M', xMm: 80, yMm: 120 };

type Place = Partial<Standoff> & Pick<Standoff, 'id'>;
const onTray = (...places: readonly Place[]): Build => bench().tray('atx', ...places).build;
const standoffsOf = (build: Build, of = faultsOf) =>
  of(build).filter(({ cause }) => cause === 'short-standoff');
const any = SUPPLY_FAULTS.find(({ cause }) => cause === 'short-standoff');
const sumOf = (faults: readonly { readonly weight: number }[]) =>
  faults.reduce((sum, { weight }) => sum + weight, 0);

describe('standoffs that may touch the board', () => {
  it('are the one of any machine where the build says nothing of its tray', () => {
    expect(standoffsOf(bench().build)).toEqual([any]);
  });

  it('are named as the tray has them, and are met as often in all as on any machine', () => {
    const found = standoffsOf(onTray(B, C, MIDDLE));
    expect(found.map(({ id }) => id)).toEqual(['standoff/b', 'standoff/m', 'standoff']);
    expect(found[0]?.name).toBe('Standoff\u00a0B touches the board, which has no hole there.');
    expect(sumOf(found)).toBeCloseTo(any?.weight ?? 0, 12);
    expect(found[0]?.weight).toBe(found[1]?.weight);
    for (const { ways } of found) expect(ways).toBe(any?.ways);
  });

  it('are hardly met where every such place was seen to be empty: only one that is not listed is left', () => {
    const [left, ...others] = standoffsOf(onTray({ ...B, seen: 'empty' }, C));
    expect(others).toEqual([]);
    expect(left?.id).toBe('standoff');
    expect(left?.weight).toBeLessThan(0.2 * (any?.weight ?? 0));
  });

  it.each([{ seen: 'set' }, { fixed: true }] as const)(
    'that are there by the build itself, as %j, weigh as much as everything else together',
    (said) => {
      const faults = faultsAsWritten(onTray({ ...B, ...said }, MIDDLE));
      const there = faults.filter(({ id }) => id === 'standoff/b');
      expect(there).toHaveLength(1);
      expect(sumOf(there) / sumOf(faults)).toBeCloseTo(0.5, 9);
    },
  );

  it('follow the tray and the outline, though the wiring stays', () => {
    const build = onTray(B);
    const { tray, ...bare } = build.case;
    expect(standoffsOf(build)).toHaveLength(2);
    expect(standoffsOf({ ...build, case: bare })).toEqual([any]);
    const other = bench().tray('micro-atx').build.board.outline;
    const smaller: Build = { ...build, board: { ...build.board, outline: other } };
    expect(standoffsOf(smaller).map(({ id }) => id)).toEqual(['standoff']);
    expect(tray).toBeDefined();
  });
});
