import { describe, expect, it } from 'vitest';
import { drivesToBranches } from '../../../../boards/routing/assign/branches';
import {
  type DataDrive,
  type DataPort,
  drivesToPorts,
  payloadMBps,
} from '../../../../boards/routing/assign/ports';

const PORTS: readonly DataPort[] = [
  { id: 'slow-1', lineRateGbps: 3 },
  { id: 'slow-2', lineRateGbps: 3 },
  { id: 'fast-1', lineRateGbps: 6, offWith: ['m2-lower'] },
  { id: 'fast-2', lineRateGbps: 6 },
];

function placed(drives: readonly DataDrive[], usedM2: readonly string[] = []) {
  return drivesToPorts(drives, PORTS, usedM2).drives.map(({ drive, port, reason }) => [
    drive,
    port,
    reason.code,
  ]);
}

describe('data ports', () => {
  it('carry 150, 300 and 600 MB/s (Serial ATA revisions 1 to 3, a reference page; 8b/10b)', () => {
    expect([payloadMBps(1.5), payloadMBps(3), payloadMBps(6)]).toEqual([150, 300, 600]);
  });

  it('go to drives by speed: the fast drive gets the fast port, whatever the order', () => {
    const plan = drivesToPorts(
      [
        { id: 'disk', lineRateGbps: 6, fastestMBps: 220 },
        { id: 'quick', lineRateGbps: 6, fastestMBps: 560 },
      ],
      PORTS,
      [],
    );
    expect(plan).toEqual({
      proven: true,
      drives: [
        {
          drive: 'disk',
          port: 'slow-1',
          pinned: false,
          reason: { code: 'full-speed', needsMBps: 220, portMBps: 300 },
        },
        {
          drive: 'quick',
          port: 'fast-1',
          pinned: false,
          reason: { code: 'full-speed', needsMBps: 560, portMBps: 600 },
        },
      ],
    });
  });

  it('that an M.2 place switches off are not used, and the drive that loses least is slowed', () => {
    const quick: DataDrive[] = [
      { id: 'quick', lineRateGbps: 6, fastestMBps: 560 },
      { id: 'middling', lineRateGbps: 6, fastestMBps: 400 },
    ];
    expect(placed(quick)).toEqual([
      ['quick', 'fast-1', 'full-speed'],
      ['middling', 'fast-2', 'full-speed'],
    ]);
    expect(placed(quick, ['m2-lower'])).toEqual([
      ['quick', 'fast-2', 'full-speed'],
      ['middling', 'slow-1', 'slowed'],
    ]);
  });

  it('are left to the person who chose one, or it is said why that cannot be', () => {
    const pin = (id: string, pinned: string): DataDrive => ({ id, lineRateGbps: 6, pinned });
    expect(placed([pin('a', 'slow-2')])).toEqual([['a', 'slow-2', 'slowed']]);
    expect(placed([pin('a', 'fast-1')], ['m2-lower'])).toEqual([['a', undefined, 'pinned-off']]);
    expect(placed([pin('a', 'fast-2'), pin('b', 'fast-2')])).toEqual([
      ['a', 'fast-2', 'full-speed'],
      ['b', undefined, 'pinned-taken'],
    ]);
    expect(placed([pin('a', 'none')])).toEqual([['a', undefined, 'pinned-unknown']]);
  });

  it('may be too few', () => {
    const five = Array.from({ length: 5 }, (_, at): DataDrive => ({ id: `d${at}`, lineRateGbps: 3 }));
    expect(placed(five).filter(([, port]) => port === undefined)).toEqual([
      ['d4', undefined, 'no-port-left'],
    ]);
  });
});

describe('supply branches', () => {
  const drive = (id: string, startA: number, over = {}) => ({ id, startA, ...over });

  it('carry no more than their plugs and their current allow', () => {
    const drives = ['a', 'b', 'c', 'd'].map((id) => drive(id, 2.2));
    const plan = drivesToBranches(drives, [
      { id: 'long', connectors: 4, ratedA: 4.4 },
      { id: 'short', connectors: 1, ratedA: 10 },
    ]);
    expect(plan.branches).toEqual([
      { branch: 'long', used: 2, loadA: 4.4 },
      { branch: 'short', used: 1, loadA: 2.2 },
    ]);
    expect(plan.drives.filter(({ branch }) => branch === undefined)).toHaveLength(1);
  });

  it('keep the drives that are on them, and move the one that is chosen or too much', () => {
    const branches = [
      { id: 'one', connectors: 2, ratedA: 4 },
      { id: 'two', connectors: 2, ratedA: 4 },
    ];
    const crowded = [
      drive('a', 2, { on: 'one' }),
      drive('b', 2.5, { on: 'one' }),
      drive('c', 2, { on: 'one' }),
    ];
    expect(drivesToBranches(crowded, branches).drives).toEqual([
      { drive: 'a', branch: 'one', moved: false },
      { drive: 'b', branch: 'two', moved: true },
      { drive: 'c', branch: 'one', moved: false },
    ]);
    expect(drivesToBranches([drive('a', 2, { on: 'one', pinned: 'two' })], branches).drives).toEqual([
      { drive: 'a', branch: 'two', moved: true },
    ]);
  });
});
