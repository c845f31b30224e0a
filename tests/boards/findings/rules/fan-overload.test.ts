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

/** A header for 1 A; on it the first of these hubs, and each further one on the first outlet of the one before. */
function chained(...hubs: readonly ['header' | 'supply', number][]): Bench {
  const start = bench().connector(socket('sys', 20, { amps: 1 }));
  return hubs.reduce((so, [fedBy, amps], at) => {
    const made = so.unit(`fan-hub-${fedBy}`, `h${at + 1}`, { hub: { fedBy, amps } });
    return made.seat(`h${at + 1}-tail`, at === 0 ? 'sys' : `h${at}-fan-1`, '1', { plug: 'header' });
  }, start);
}

function fansAt(build: Bench, figures: Partial<FanRating>, ...outlets: readonly string[]): Bench {
  return outlets.reduce(
    (so, outlet) => fan(so, `at-${outlet}`, figures).seat(`at-${outlet}`, outlet, '1'),
    build,
  );
}

describe('what hangs on a hub that hangs on a hub', () => {
  const second = ['h2-fan-1', 'h2-fan-2', 'h2-fan-3', 'h2-fan-4'];
  const strong = { runningAmps: 0.6, startAmps: 1.2 };

  test('is too much for the header at the end of both tails', () => {
    const found = fansAt(chained(['header', 4], ['header', 4]), strong, ...second).finding('fan-overload');
    // 4 × 0.6 A running, 4 × 1.2 A at the start.
    expect(found).toMatchObject({
      severity: 'danger',
      pins: [{ connector: 'sys', pin: '2' }],
      data: { connector: 'sys', hub: 'h1', runningAmps: 2.4, startAmps: 4.8, ratedAmps: 1 },
    });
  });

  test('counts with what is on the first hub itself', () => {
    const mixed = fansAt(
      fansAt(
        chained(['header', 4], ['header', 4]),
        { runningAmps: 0.4, startAmps: 0.8 },
        'h1-fan-2',
        'h1-fan-3',
      ),
      { runningAmps: 0.4, startAmps: 0.8 },
      ...second,
    );
    expect(mixed.finding('fan-overload')).toMatchObject({
      severity: 'danger',
      data: { runningAmps: 2.4, startAmps: 4.8 },
    });
    // The second hub's own four, 3.2 A at the start, are within its 4 A.
    expect(mixed.all('fan-overload')).toHaveLength(1);
  });

  test('is held against each hub on its way, whatever the header may carry', () => {
    const build = fansAt(
      chained(['header', 4], ['header', 1]),
      { runningAmps: 0.2, startAmps: 0.4 },
      ...second,
    );
    const wide = build.with({
      board: { ...build.build.board, connectors: [socket('sys', 20, { amps: 4 })] },
    });
    // 0.8 A running is within 1 A, 1.6 A at the start is not; the header and the first hub would carry it.
    expect(
      wide.all('fan-overload').map(({ severity, data }) => [severity, data.hub, data.connector]),
    ).toEqual([['fault', 'h2', 'h1-fan-1']]);
    expect(wordsOf(wide.finding('fan-overload'), wide.build).title).toBe(
      'The fans on 1 of H1 through H2 take 1.6\u00a0A when they start, and it may carry 1\u00a0A.',
    );
  });

  test('is off the header where that hub has the supply', () => {
    const build = chained(['header', 4], ['supply', 4]);
    expect(fansAt(build, strong, 'h2-fan-1', 'h2-fan-2').all('fan-overload')).toEqual([]);
    expect(fansAt(build, strong, ...second).finding('fan-overload')).toMatchObject({
      // 4 × 1.2 A at the start are more than 4 A, 4 × 0.6 A running are not.
      severity: 'fault',
      data: { hub: 'h2', fedBySupply: true, startAmps: 4.8, ratedAmps: 4 },
    });
  });

  /** The tail of the first hub on an outlet of the second, whose own is on the first. */
  function inRing(first: 'header' | 'supply'): Bench {
    const { build } = chained([first, 1], ['header', 4]);
    const seats = build.seats.map((seat) =>
      seat.lead === 'h1-tail' && seat.plug === 'header' ? { ...seat, connector: 'h2-fan-1' } : seat,
    );
    return fansAt(bench().with({ ...build, seats }), strong, 'h1-fan-2', 'h2-fan-2', 'h2-fan-3', 'h2-fan-4');
  }

  test('is on nothing where two tails make a ring, and on the first hub where the supply feeds that', () => {
    const unfed = inRing('header');
    expect(unfed.codes()).toContain('hub-unfed');
    expect(unfed.all('fan-overload')).toEqual([]);
    const fed = inRing('supply')
      .lead('sata-power-cable', 'sata')
      .seat('sata', 'h1-power', '1', { plug: 'first' });
    expect(fed.finding('fan-overload')).toMatchObject({
      severity: 'danger',
      data: { hub: 'h1', fedBySupply: true, startAmps: 4.8, ratedAmps: 1 },
    });
  });
});

describe('a hub that is on no header', () => {
  const outlets = ['h-fan-1', 'h-fan-2', 'h-fan-3', 'h-fan-4', 'h-fan-5', 'h-fan-6'];
  const hub = bench()
    .connector(socket('sys', 20, { amps: 1 }))
    .unit('fan-hub-supply', 'h', { hub: { fedBy: 'supply', amps: 1 } });

  test('is held against its own rating as soon as the supply feeds it', () => {
    const fed = fansAt(
      hub.lead('sata-power-cable', 'sata').seat('sata', 'h-power', '1', { plug: 'first' }),
      { runningAmps: 0.4, startAmps: 0.6 },
      ...outlets,
    );
    const found = fed.finding('fan-overload');
    // 6 × 0.4 A running, 6 × 0.6 A at the start.
    expect(found).toMatchObject({
      severity: 'danger',
      data: { hub: 'h', fedBySupply: true, runningAmps: 2.4, startAmps: 3.6, ratedAmps: 1 },
    });
    expect(wordsOf(found, fed.build).title).toContain('The fans on H take 2.4\u00a0A while they run');
  });

  test('carries nothing while its power socket is empty too', () => {
    const loose = fansAt(hub, { runningAmps: 0.4, startAmps: 0.6 }, ...outlets);
    expect(loose.codes()).toContain('hub-unfed');
    expect(loose.all('fan-overload')).toEqual([]);
  });
});
