import { describe, expect, it } from 'vitest';
import type { Build } from '../../../../boards/document/build';
import { makeConnector } from '../../../../boards/library/make-connector';
import { assignmentsOf } from '../../../../boards/routing/assign/assignments';
import { movesTo } from '../../../../boards/routing/assign/moves';
import { fanPlaceWords, missingWords } from '../../../../boards/routing/assign/words';
import { bench } from '../../findings/harness';

function movesOf(build: Build) {
  return movesTo(build, assignmentsOf(build));
}

function reasonsOf(build: Build) {
  return Object.fromEntries(assignmentsOf(build).fans.fans.map(({ fan, reason }) => [fan, reason.code]));
}

const NOTHING = { seats: [], off: [], missing: [] };

describe('a fan whose plug enters no header', () => {
  const beside = bench()
    .header('fan-1x3', 'sys')
    .lead('fan-on-drive-plug', 'side')
    .lead('fan-1x3', 'front')
    .seat('front', 'sys', '1').build;

  it('takes none from a fan that works', () => {
    expect(reasonsOf(beside)).toEqual({ side: 'fits-none', front: 'placed' });
    expect(movesOf(beside)).toEqual(NOTHING);
    const [side] = assignmentsOf(beside).fans.fans;
    expect(side && fanPlaceWords({ fan: 'SIDE', reason: side.reason })).toContain('enters no fan header');
  });

  it('takes none either where a person has chosen one for it', () => {
    const chosen: Build = { ...beside, choices: [{ kind: 'header', of: 'side', on: 'sys' }] };
    expect(reasonsOf(chosen)).toEqual({ side: 'fits-none', front: 'placed' });
    expect(movesOf(chosen)).toEqual(NOTHING);
  });

  it('is told of the choice where another header would take it', () => {
    const both = bench()
      .header('fan-1x3', 'sys')
      .header('peripheral-power-1x4', 'odd', { '1': { signal: 'fan-supply' } })
      .lead('fan-on-drive-plug', 'side').build;
    const chosen: Build = { ...both, choices: [{ kind: 'header', of: 'side', on: 'sys' }] };
    expect(reasonsOf(both)).toEqual({ side: 'placed' });
    expect(reasonsOf(chosen)).toEqual({ side: 'pinned-no-fit' });
  });
});

describe('a plug that cannot be had where it is to go', () => {
  const header = (id: string, yMm: number) =>
    makeConnector('fan-1x3', { id, print: id.toUpperCase(), place: { xMm: 20, yMm, turn: 0 } });
  /** Two headers 2 mm apart, with room for the plug of one fan, and a third beside them. */
  const narrow = bench()
    .connector(header('one', 20))
    .connector(header('two', 22))
    .connector(header('three', 60))
    .lead('fan-1x3', 'front')
    .lead('fan-1x3', 'rear')
    .seat('front', 'one', '1');

  it('drives nothing out that works', () => {
    const chosen = narrow.with({ choices: [{ kind: 'header', of: 'rear', on: 'two' }] }).build;
    expect(movesOf(chosen)).toEqual({ ...NOTHING, missing: [{ of: 'rear', code: 'in-the-way' }] });
    expect(missingWords({ of: 'REAR', code: 'in-the-way' })).toContain('Take that off first');
  });

  it('keeps its own place, whoever else is to go there', () => {
    const choices = [
      { kind: 'header' as const, of: 'rear', on: 'two' },
      { kind: 'header' as const, of: 'side', on: 'three' },
    ];
    const waiting = narrow.seat('rear', 'three', '1').lead('fan-1x3', 'side').with({ choices }).build;
    expect(movesOf(waiting)).toEqual({
      ...NOTHING,
      missing: [
        { of: 'rear', code: 'in-the-way' },
        { of: 'side', code: 'in-the-way' },
      ],
    });
  });
});
