import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AllotItem, allot } from '../../../../boards/routing/assign/allot';
import { type Fan, fansToHeaders } from '../../../../boards/routing/assign/fans';
import { drivesToPorts } from '../../../../boards/routing/assign/ports';
import { stayWhereTheyAre } from '../../../../boards/routing/assign/stay';

function fan(id: string, over: Partial<Fan> = {}): Fan {
  return { id, wires: 4, cools: 'case', runningA: 0.2, startA: 0.4, ...over };
}

const HEADERS = ['sys-1', 'sys-2', 'sys-3'].map((id) => ({ id, modes: ['pwm'] as const, ratedA: 1 }));

function placesOf(fans: readonly Fan[], headers = HEADERS) {
  return Object.fromEntries(fansToHeaders(fans, headers).fans.map((each) => [each.fan, each.header]));
}

describe('what is as good where it is', () => {
  it('stays there: two equal fans on the second header and the first', () => {
    const fans = [fan('a', { on: 'sys-2' }), fan('b', { on: 'sys-1' })];
    expect(placesOf(fans)).toEqual({ a: 'sys-2', b: 'sys-1' });
  });

  it('stays there in a ring of three, and beside one that has no place yet', () => {
    const ring = [fan('a', { on: 'sys-2' }), fan('b', { on: 'sys-3' }), fan('c', { on: 'sys-1' })];
    expect(placesOf(ring)).toEqual({ a: 'sys-2', b: 'sys-3', c: 'sys-1' });
    expect(placesOf([fan('new'), fan('old', { on: 'sys-1' })])).toMatchObject({ old: 'sys-1' });
  });

  it('stays there rather than give way to an equal one that has no place yet', () => {
    const [only] = HEADERS;
    expect(only && placesOf([fan('new'), fan('old', { on: 'sys-1' })], [only])).toEqual({
      new: undefined,
      old: 'sys-1',
    });
  });

  it('gives way to what gains by it', () => {
    const fans = [fan('three', { wires: 3, on: 'sys-1' }), fan('four', { on: 'dc' })];
    const headers = [HEADERS[0], { id: 'dc', modes: ['dc'] as const, ratedA: 1 }].flatMap(
      (each) => each ?? [],
    );
    expect(fansToHeaders(fans, headers).fans.map(({ header }) => header)).toEqual(['dc', 'sys-1']);
  });

  it('stays there on data ports: two equal drives that sit across', () => {
    const ports = ['d1', 'd2'].map((id) => ({ id, lineRateGbps: 6 as const }));
    const drives = [
      { id: 'a', lineRateGbps: 6 as const, on: 'd2' },
      { id: 'b', lineRateGbps: 6 as const, on: 'd1' },
    ];
    expect(drivesToPorts(drives, ports, []).drives.map(({ port }) => port)).toEqual(['d2', 'd1']);
  });

  it('keeps the outlet of a hub that the board hears', () => {
    const hub = { outlets: 4, ratedA: 4, speedOutlet: 1, fedBy: 'supply' as const };
    const header = { id: 'sys-1', modes: ['pwm'] as const, ratedA: 1, hub };
    const fans = [fan('a', { on: 'sys-1' }), fan('b', { on: 'sys-1', heard: true })];
    expect(fansToHeaders(fans, [header]).fans.map(({ outlet }) => outlet)).toEqual([2, 1]);
  });
});

describe('any allotment', () => {
  const anyItem = fc.record({
    takes: fc.tuple(fc.constant(1), fc.integer({ min: 1, max: 4 })),
    weight: fc.integer({ min: 1, max: 2 }),
    costs: fc.array(fc.option(fc.integer({ min: 0, max: 2 }), { nil: undefined }), {
      minLength: 3,
      maxLength: 3,
    }),
  });
  const anyPlace = fc.option(fc.integer({ min: 0, max: 2 }), { nil: undefined });
  const rooms = [
    [2, 4],
    [1, 3],
    [2, 6],
  ];

  /** What is left out and what the rest costs; undefined where something takes more than there is. */
  function worth(items: readonly AllotItem[], places: readonly (number | undefined)[]) {
    const at = (place: number) => items.filter((_, item) => places[item] === place);
    const isOver = rooms.some((room, place) =>
      room.some((has, of) => at(place).reduce((sum, { takes }) => sum + (takes[of] ?? 0), 0) > has),
    );
    const costs = items.map(({ costs: own }, item) => own[places[item] ?? -1]);
    if (isOver || costs.some((cost, item) => cost === undefined && places[item] !== undefined))
      return undefined;
    return {
      out: items.reduce((sum, { weight }, item) => sum + (places[item] === undefined ? weight : 0), 0),
      cost: costs.reduce((sum: number, cost) => sum + (cost ?? 0), 0),
    };
  }

  it('weighs and costs the same afterwards, has no fewer where they are, and takes no more than there is', () => {
    let kept = 0;
    fc.assert(
      fc.property(fc.array(fc.tuple(anyItem, anyPlace), { maxLength: 6 }), (drawn) => {
        const items = drawn.map(([item]) => item);
        const own = drawn.map(([, place]) => place);
        const { places } = allot(items, rooms);
        const after = stayWhereTheyAre(items, rooms, places, own);
        expect(worth(items, after)).toBeDefined();
        expect(worth(items, after)).toEqual(worth(items, places));
        const home = (of: readonly (number | undefined)[]) =>
          own.filter((place, item) => place !== undefined && of[item] === place).length;
        expect(home(after)).toBeGreaterThanOrEqual(home(places));
        kept += home(after) - home(places);
      }),
    );
    expect(kept).toBeGreaterThan(0);
  });
});
