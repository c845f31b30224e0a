import { describe, expect, it } from 'vitest';
import { parseDocument } from '../../../boards/document/parse';
import { serialize } from '../../../boards/document/serialize';
import { grid, partLead } from '../fixtures/bench';
import { faults, soundBuild } from './refused';

/** A build with a rated header and port, a fan, a drive, a hub and a choice. */
function rated() {
  const build = soundBuild();
  const fan = partLead('rear-fan', 'fan', grid(1, 4), { ground: '1', supply: '2' });
  const unit = (id: string, over: object) => ({ id, name: id, connectors: [], ...over });
  return {
    ...build,
    board: {
      ...build.board,
      drivePlaces: [{ id: 'upper', name: 'M.2 upper' }],
      connectors: build.board.connectors.map((each) => ({
        ...each,
        rating: { amps: 1, fanModes: ['pwm', 'dc'], watched: true, lineRateGbps: 6, offWith: ['upper'] },
      })),
    },
    extras: [
      {
        ...fan,
        parts: [{ id: 'part', kind: 'fan', fan: { runningAmps: 0.2, startAmps: 0.5, cools: 'processor' } }],
      },
    ],
    units: [
      unit('disk', { kind: 'drive', drive: { lineRateGbps: 3, fastestMBps: 180, startAmps: 1.8 } }),
      unit('hub', { kind: 'hub', hub: { fedBy: 'supply', amps: 4.5, speedOutlet: 'hub-1' } }),
    ],
    choices: [{ kind: 'header', of: 'rear-fan', on: 'panel' }],
  };
}

function faultsWith(path: string, value: unknown): readonly string[] {
  const build: unknown = rated();
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let at = build;
  for (const key of keys) at = Reflect.get(Object(at), key);
  Reflect.set(Object(at), last, value);
  return faults(build);
}

describe('what a manual or a label says of currents and speeds', () => {
  it('is kept to the letter', () => {
    const read = parseDocument(JSON.stringify(rated()));
    if (!read.ok) throw new Error(JSON.stringify(read.problem));
    expect(JSON.parse(serialize(read.value))).toEqual(rated());
  });

  it('is of a size, and of the three published line rates', () => {
    expect(faultsWith('board.connectors.0.rating.amps', 0)).toEqual([
      'board.connectors[0].rating.amps: expected a finite number above 0, at most 100, found 0',
    ]);
    expect(faultsWith('units.0.drive.lineRateGbps', 5)[0]).toContain('units[0].drive.lineRateGbps');
    expect(faultsWith('units.1.hub.fedBy', 'wall')[0]).toContain('units[1].hub.fedBy');
  });

  it('is told of fans only, where it is told of a part', () => {
    expect(
      faultsWith('case.leads.0.parts.0.fan', { runningAmps: 0.2, startAmps: 0.5, cools: 'case' }),
    ).toEqual(['case.leads[0].parts[0].fan: expected no figures of a fan for a power switch, found figures']);
  });

  it('names every place for a drive once', () => {
    expect(
      faultsWith('board.drivePlaces', [
        { id: 'upper', name: 'M.2 upper' },
        { id: 'upper', name: 'M.2 lower' },
      ]),
    ).toEqual([
      'board.drivePlaces[1].id: expected an id that is not at board.drivePlaces[0].id already, found “upper”',
    ]);
  });
});
