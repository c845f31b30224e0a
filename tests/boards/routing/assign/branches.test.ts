import { describe, expect, it } from 'vitest';
import type { Build } from '../../../../boards/document/build';
import type { PlaceChoice } from '../../../../boards/document/rating';
import { makeConnector } from '../../../../boards/library/make-connector';
import { assignmentsOf } from '../../../../boards/routing/assign/assignments';
import { movesTo } from '../../../../boards/routing/assign/moves';
import { branchWords } from '../../../../boards/routing/assign/words';
import type { Bench } from '../../findings/harness';
import { supplied } from './supplied';

/** A supply with an outlet of 4.5 A for each of these cables, each with two plugs for drives. */
function twoPlugs(...cables: readonly string[]): Bench {
  return supplied(Object.fromEntries(cables.map((cable) => [cable, ['sata-power-cable', 4.5]])));
}

/** Drives of 2 A at the start, each on a plug of a cable, or loose. */
function withDrives(
  build: Bench,
  drives: Readonly<Record<string, readonly [string, string] | undefined>>,
): Bench {
  return Object.entries(drives).reduce((so, [id, on]) => {
    const added = so.unit('drive', id, { drive: { lineRateGbps: 6, startAmps: 2 } });
    return on === undefined ? added : added.seat(on[0], `${id}-power`, '1', { plug: on[1] });
  }, build);
}

/** A hub on the second plug of a cable, with as many fans of 0.5 A at the start. */
function withHub(build: Bench, cable: string, fans: number): Bench {
  const hub = build
    .unit('fan-hub-supply', 'hub', { hub: { fedBy: 'supply', amps: 4 } })
    .seat(cable, 'hub-power', '1', { plug: 'second' });
  return Array.from({ length: fans }, (_, at) => `fan-${at + 1}`).reduce((so, id) => {
    const fan = { runningAmps: 0.3, startAmps: 0.5, cools: 'case' as const };
    return so.lead('fan-1x4', id, { parts: [{ id: 'fan', kind: 'fan', fan }] }).seat(id, `hub-${id}`, '1');
  }, hub);
}

function chosen(build: Bench, on: Readonly<Record<string, string>>): Build {
  const choices = Object.entries(on).map(([of, cable]): PlaceChoice => ({ kind: 'branch', of, on: cable }));
  return build.with({ choices }).build;
}

function placesIn(build: Build) {
  return Object.fromEntries(
    assignmentsOf(build).branches.drives.map(({ drive, branch, reason }) => [drive, branch ?? reason]),
  );
}

describe('a supply cable with a hub on it', () => {
  it('has one plug less for drives, and says what hub and drive take together', () => {
    const build = withDrives(withHub(twoPlugs('left'), 'left', 4), {
      d1: ['left', 'first'],
      d2: undefined,
    }).build;
    expect(placesIn(build)).toEqual({ d1: 'left', d2: { code: 'no-branch-left' } });
    expect(movesTo(build, assignmentsOf(build)).missing).toEqual([]);
    // 2 A of the drive and 4 × 0.5 A of the fans.
    expect(assignmentsOf(build).branches.branches).toEqual([{ branch: 'left', used: 2, loadA: 4 }]);
    const load = { loadA: 4, ratedA: 4.5, used: 2, plugs: 2 };
    const words = (isMixed: boolean) =>
      branchWords({ drive: 'D1', branch: 'LEFT', moved: false, load: { ...load, isMixed } });
    expect(words(true)).toBe(
      'D1 hangs on LEFT. 2 of its 2\u00a0plugs are in use; all that is known of what is on it takes 4.00\u00a0A at the start, of 4.50\u00a0A.',
    );
    expect(words(false)).toContain('all drives on it take 4.00\u00a0A');
  });

  it('gives drives the current that the fans leave', () => {
    // 6 × 0.5 A of the fans leave 1.5 A of 4.5 A.
    const hub = withHub(twoPlugs('left', 'right'), 'left', 6);
    expect(placesIn(withDrives(hub, { d1: ['left', 'first'] }).build)).toEqual({ d1: 'right' });
    expect(placesIn(chosen(withDrives(hub, { d1: undefined }), { d1: 'left' }))).toEqual({
      d1: { code: 'pinned-overloaded', startA: 2, leftA: 1.5 },
    });
  });
});

describe('full supply cables', () => {
  const full = withDrives(twoPlugs('left', 'right'), {
    a: ['left', 'first'],
    b: ['left', 'second'],
    c: ['right', 'first'],
    d: ['right', 'second'],
  });

  it('exchange drives where one is chosen for the other cable', () => {
    const build = chosen(full, { a: 'right' });
    const { seats, off, missing } = movesTo(build, assignmentsOf(build));
    expect(missing).toEqual([]);
    expect(off).toEqual([]);
    const leaves = seats.find(({ connector }) => connector !== 'a-power')?.connector;
    expect(['c-power', 'd-power']).toContain(leaves);
    expect(seats.map(({ lead, connector }) => [lead, connector])).toEqual([
      ['right', 'a-power'],
      ['left', leaves],
    ]);
    const after: Build = {
      ...build,
      seats: [
        ...build.seats.filter((seat) => !seats.some((to) => to.lead === seat.lead && to.plug === seat.plug)),
        ...seats,
      ],
    };
    expect(movesTo(after, assignmentsOf(after))).toEqual({ seats: [], off: [], missing: [] });
  });

  it('take no plug off a drive that another plug keeps from its new one', () => {
    const place = (yMm: number) => ({ xMm: 0, yMm, turn: 0 as const });
    const connectors = [
      makeConnector('sata-power-15', { id: 'a-power', print: 'POWER', place: place(0) }),
      makeConnector('fan-1x3', { id: 'a-near', print: 'NEAR', place: place(1) }),
    ];
    const three = withDrives(twoPlugs('left', 'right', 'middle'), {
      ...{ a: ['left', 'first'], b: ['left', 'second'], c: ['middle', 'first'] },
    });
    const near = three
      .with({
        units: three.build.units?.map((unit) => (unit.id === 'a' ? { ...unit, connectors } : unit)) ?? [],
      })
      .lead('fan-1x3', 'near')
      .seat('near', 'a-near', '1');
    // C is to have the plug that A leaves, and A cannot leave it.
    const build = chosen(near, { a: 'right', c: 'left' });
    expect(movesTo(build, assignmentsOf(build))).toEqual({
      seats: [],
      off: [],
      missing: [
        { of: 'a', code: 'in-the-way' },
        { of: 'c', code: 'in-the-way' },
      ],
    });
  });

  it('leave every drive its plug where one of those that would change finds none to go to', () => {
    const three = withDrives(twoPlugs('left', 'right', 'middle'), {
      ...{ a: ['left', 'first'], b: ['left', 'second'], c: ['right', 'first'], d: ['right', 'second'] },
      ...{ e: ['middle', 'first'], f: ['middle', 'second'] },
    }).build;
    const assigned = assignmentsOf(three);
    // A is to have the plug of C, and C one of a cable that is full; so C stays, and A with it.
    const drives = assigned.branches.drives.map((each) => {
      if (each.drive === 'a') return { ...each, branch: 'right', moved: true };
      return each.drive === 'c' ? { ...each, branch: 'middle', moved: true } : each;
    });
    expect(movesTo(three, { ...assigned, branches: { ...assigned.branches, drives } })).toEqual({
      seats: [],
      off: [],
      missing: [
        { of: 'a', code: 'no-lead' },
        { of: 'c', code: 'no-lead' },
      ],
    });
  });
});

describe('a supply cable that a person has chosen', () => {
  it('is told as the reason where it is gone, or full of what is chosen for it too', () => {
    const three = withDrives(twoPlugs('left', 'right'), { a: undefined, b: undefined, c: undefined });
    expect(placesIn(chosen(three, { a: 'gone' }))).toMatchObject({ a: { code: 'pinned-unknown' } });
    const crowded = placesIn(chosen(three, { a: 'left', b: 'left', c: 'left' }));
    expect(Object.values(crowded)).toEqual(['left', 'left', { code: 'pinned-taken' }]);
  });

  it('is never said to be the last one', () => {
    const words = (['pinned-unknown', 'pinned-taken'] as const).map((code) =>
      branchWords({ drive: 'D1', moved: false, reason: { code } }),
    );
    expect(words).toEqual([
      'The cable chosen for D1 is not there, or on no outlet of the supply. Choose another.',
      'What else is on the cable chosen for D1, or chosen for it, leaves no plug or current. Choose another for one of them.',
    ]);
    expect(
      branchWords({
        drive: 'D1',
        moved: false,
        reason: { code: 'pinned-overloaded', startA: 2, leftA: 1.5 },
      }),
    ).toBe('D1 takes 2.00\u00a0A at its start, the chosen cable has 1.50\u00a0A for drives. Choose another.');
  });
});
