import { describe, expect, test } from 'vitest';
import type { FanRating, Rating } from '../../../../boards/document/rating';
import type { Unit } from '../../../../boards/document/unit';
import { wordsOf } from '../../../../boards/findings/words';
import { singleRow } from '../../../../boards/library/grids';
import { makeConnector } from '../../../../boards/library/make-connector';
import { plug } from '../../../../boards/library/plug-and-wires';
import { type Bench, bench } from '../harness';

function socket(id: string, yMm: number, rating?: Rating) {
  const made = makeConnector('fan-1x4', { id, print: id.toUpperCase(), place: { xMm: 20, yMm, turn: 0 } });
  return rating ? { ...made, rating } : made;
}

function fan(build: Bench, id: string, figures?: Partial<FanRating>): Bench {
  const rating = { runningAmps: 0.3, startAmps: 0.6, cools: 'case' as const, ...figures };
  return build.lead('fan-1x4', id, { parts: [{ id: 'fan', kind: 'fan', ...(figures && { fan: rating }) }] });
}

/** A header for 1 A with a hub on it that has four outlets. */
function hubbed(fedBy: 'header' | 'supply', amps: number): Bench {
  const hub: Unit = {
    id: 'hub',
    name: 'Hub',
    kind: 'hub',
    hub: { fedBy, amps },
    connectors: ['in', 'one', 'two', 'three', 'four'].map((id) => socket(id, 0)),
  };
  return bench()
    .connector(socket('fan-1', 20, { amps: 1 }))
    .lead('fan-1x4', 'tail', {
      parts: [],
      plugs: [plug('board', '', singleRow(4)), plug('hub', '', singleRow(4))],
      wires: [1, 2, 3, 4].map((at) => ({ from: `board.${at}`, to: `hub.${at}`, colour: 'black' })),
    })
    .with({
      units: [hub],
      seats: [
        { lead: 'tail', plug: 'board', connector: 'fan-1', at: [0, 0], turn: 0 },
        { lead: 'tail', plug: 'hub', connector: 'in', at: [0, 0], turn: 0 },
      ],
    });
}

function withFans(
  build: Bench,
  outlets: readonly string[],
  figures: Partial<FanRating> | 'unread' = {},
): Bench {
  const read = figures === 'unread' ? undefined : figures;
  const fans = outlets.reduce((so, outlet) => fan(so, `fan-at-${outlet}`, read), build);
  return fans.with({
    seats: [
      ...fans.build.seats,
      ...outlets.map((outlet) => ({
        lead: `fan-at-${outlet}`,
        plug: 'plug',
        connector: outlet,
        at: [0, 0] as [number, number],
        turn: 0 as const,
      })),
    ],
  });
}

// Ratings are those of the example; yours are in the board's manual. That one header gives about 1 A is common practice, no source.
describe('what hangs on a fan header', () => {
  test('four fans of 0.3 A on a hub without a supply of its own are too much for 1 A', () => {
    const found = withFans(hubbed('header', 4), ['one', 'two', 'three', 'four']).finding('fan-overload');
    expect(found).toMatchObject({
      severity: 'danger',
      leads: ['fan-at-one', 'fan-at-two', 'fan-at-three', 'fan-at-four'],
      pins: [{ connector: 'fan-1', pin: '2' }],
      data: { hub: 'hub', runningAmps: 1.2, startAmps: 2.4, ratedAmps: 1 },
    });
  });

  test('two of them pass it only while they start', () => {
    const found = withFans(hubbed('header', 4), ['one', 'two']).finding('fan-overload');
    expect(found).toMatchObject({ severity: 'fault', data: { runningAmps: 0.6, startAmps: 1.2 } });
    const words = wordsOf(found, withFans(hubbed('header', 4), ['one', 'two']).build);
    expect(words.title).toContain('FAN-1 through Hub take 1.2\u00a0A when they start');
  });

  test('a hub fed from the supply unit takes them off the header, and has a rating of its own', () => {
    const outlets = ['one', 'two', 'three', 'four'];
    expect(withFans(hubbed('supply', 4), outlets).codes()).not.toContain('fan-overload');
    const small = withFans(hubbed('supply', 1), outlets);
    const found = small.finding('fan-overload');
    expect(found).toMatchObject({ severity: 'danger', data: { fedBySupply: true, ratedAmps: 1 } });
    expect(wordsOf(found, small.build).reason).toContain('can burn the hub');
  });

  test('a hub or fans of which nobody has read what they carry and take are only doubted', () => {
    const outlets = ['one', 'two', 'three', 'four'];
    const strong = withFans(hubbed('supply', 4), outlets, { runningAmps: 1.2, startAmps: 2.2 });
    const [hub] = strong.build.units ?? [];
    if (hub === undefined) throw new Error('No hub');
    const { hub: _rating, ...unread } = hub;
    const fed = { ...socket('power', 0), pins: [{ pin: '1', signal: 'supply-12v' as const }] };
    const powered = { ...unread, connectors: [...unread.connectors, fed] };
    expect(strong.with({ units: [powered] }).finding('fan-overload')).toMatchObject({
      severity: 'doubt',
      data: { unread: 'hub', fedBySupply: true },
    });
    expect(withFans(hubbed('header', 4), outlets, 'unread').finding('fan-overload')).toMatchObject({
      severity: 'doubt',
      data: { unread: 'fan', ratedAmps: 1 },
    });
  });

  test('a header whose manual nobody read is only doubted', () => {
    const one = fan(bench().connector(socket('fan-1', 20)), 'big', { runningAmps: 1.2, startAmps: 2.2 });
    expect(one.seat('big', 'fan-1', '1').finding('fan-overload')).toMatchObject({
      severity: 'doubt',
      data: { unread: 'header' },
    });
    expect(
      fan(bench().connector(socket('fan-1', 20)), 'plain')
        .seat('plain', 'fan-1', '1')
        .codes(),
    ).toEqual([]);
  });
});
