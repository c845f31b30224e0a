import { describe, expect, it } from 'vitest';
import type { Build } from '../../../../boards/document/build';
import { assignmentsOf } from '../../../../boards/routing/assign/assignments';
import { drivesToBranches, type SupplyBranch } from '../../../../boards/routing/assign/branches';
import { movesTo } from '../../../../boards/routing/assign/moves';
import { assignGroups } from '../../../../renderer/areas/route/assign/assign-rows';
import { type Bench, bench } from '../../findings/harness';
import { supplied } from './supplied';

/** A drive of so many amperes at the start. */
const drive = (so: Bench, id: string, startAmps: number) =>
  so.unit('drive', id, { drive: { lineRateGbps: 6, startAmps } });

/** A drive of 2 A behind an adapter on a four-pin cable. */
function onAdapter(outletAmps: number, startAmps = 2): Bench {
  const four = supplied({ old: ['peripheral-power-cable', outletAmps], new: ['sata-power-cable', 9] });
  return drive(four.unit('sata-adapter', 'step'), 'd1', startAmps)
    .seat('old', 'step-in', '1', { plug: 'drive' })
    .seat('step-tail', 'd1-power', '1', { plug: 'drive' });
}

const branchesOf = (build: Build) => assignmentsOf(build).branches;
const powerWords = (build: Build) =>
  assignGroups(build)
    .find(({ kind }) => kind === 'branch')
    ?.rows.map(({ words }) => words);

describe('a drive behind an adapter', () => {
  it('hangs on the cable that feeds the adapter, and stays there', () => {
    const { build } = onAdapter(4.5);
    expect(branchesOf(build).drives).toEqual([{ drive: 'd1', branch: 'old', moved: false }]);
    expect(branchesOf(build).branches.find(({ branch }) => branch === 'old')).toMatchObject({ loadA: 2 });
    expect(movesTo(build, assignmentsOf(build))).toEqual({ seats: [], off: [], missing: [] });
    expect(powerWords(build)).toEqual([
      'D1 hangs on OLD by STEP. Its one plug is in use; all drives on it take 2.00\u00a0A at the start, of 4.50\u00a0A.',
    ]);
  });

  it('goes to a plug of another cable where its own carries too little', () => {
    const { build } = onAdapter(1);
    expect(branchesOf(build).drives).toEqual([{ drive: 'd1', branch: 'new', moved: true }]);
    const { seats, off } = movesTo(build, assignmentsOf(build));
    expect(seats.map(({ lead, connector }) => [lead, connector])).toEqual([['new', 'd1-power']]);
    expect(off).toEqual([{ lead: 'step-tail', plug: 'drive' }]);
  });

  it('leaves its adapter to no other drive: a four-pin plug enters none', () => {
    const both = drive(onAdapter(1), 'd2', 0.5);
    expect(branchesOf(both.build).drives.map(({ branch }) => branch)).toEqual(['new', 'new']);
    const four = drive(
      supplied({ old: ['peripheral-power-cable', 4.5] }).unit('sata-adapter', 'step'),
      'd1',
      2,
    )
      .seat('old', 'step-in', '1', { plug: 'drive' })
      .seat('step-tail', 'd1-power', '1', { plug: 'drive' });
    const { build } = drive(four, 'd2', 0.5);
    expect(branchesOf(build).drives).toEqual([
      { drive: 'd1', branch: 'old', moved: false },
      { drive: 'd2', moved: false, reason: { code: 'no-branches' } },
    ]);
  });

  it('leaves its adapter to no other drive also where its cable has plugs of its own', () => {
    // "mixed" has one plug for drives and one that an adapter is on, and carries one drive of 2 A, not two.
    const mixed = { connectors: 1, adapters: 1, ratedA: 3 };
    const drives = [
      { id: 'adapted', startA: 2, on: 'mixed', byAdapter: true },
      { id: 'straight', startA: 0.5, on: 'mixed' },
      { id: 'loose', startA: 0.5 },
    ];
    const placed = (branches: readonly SupplyBranch[]) =>
      drivesToBranches(drives, branches).drives.map(({ branch }) => branch);
    expect(placed([{ id: 'mixed', ...mixed }])).toEqual(['mixed', 'mixed', undefined]);
    const other = { id: 'other', connectors: 1, ratedA: 9 };
    expect(placed([{ id: 'mixed', ...mixed }, other])).toEqual(['mixed', 'mixed', 'other']);
    // Were the adapter a plug for any drive, all three had a place once this one leaves it.
    expect(placed([{ id: 'mixed', ...mixed, ratedA: 1 }, other])).toEqual([undefined, 'mixed', 'other']);
  });

  it('may be chosen for a plug of the supply’s own', () => {
    const build = onAdapter(4.5).with({ choices: [{ kind: 'branch', of: 'd1', on: 'new' }] }).build;
    expect(branchesOf(build).drives).toEqual([{ drive: 'd1', branch: 'new', moved: true }]);
    expect(branchesOf(build).branches.map(({ branch }) => branch)).toEqual(['new']);
  });

  it('has no cable where the adapter hangs in the air, or where adapters feed each other', () => {
    const loose = drive(bench().unit('sata-adapter', 'step'), 'd1', 2).seat('step-tail', 'd1-power', '1', {
      plug: 'drive',
    });
    const ring = loose
      .lead('peripheral-power-cable', 'old')
      .unit('sata-adapter', 'far')
      .seat('old', 'step-in', '1', { plug: 'drive' })
      .seat('old', 'far-tail', '1', { plug: 'supply' })
      .seat('far-tail', 'step-in', '1', { plug: 'drive' });
    for (const { build } of [loose, ring]) {
      expect(assignmentsOf(build).ofDrives.feeds).toEqual(new Map());
      expect(branchesOf(build).drives).toMatchObject([{ drive: 'd1', reason: { code: 'no-branches' } }]);
    }
  });
});
