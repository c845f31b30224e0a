import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { type Connector, SIDES } from '../../../boards/document/connector';
import { fitSeat } from '../../../boards/fit/fit-seat';
import { placesOf } from '../../../boards/fit/places';
import { bench, grid, lead, posts, seat } from '../fixtures/bench';

const HEADER = grid(2, 5);
const PAIR = grid(1, 2);
const header = posts('jfp', HEADER);

function refusals(build: Build, ...place: Parameters<typeof seat>) {
  return fitSeat(build, seat(...place)).refusals;
}

describe('shape and pitch', () => {
  it('lets open posts take any plug of their pitch', () => {
    expect(refusals(bench([header], [lead('sw', PAIR)]), 'sw', 'jfp')).toEqual([]);
  });

  it('keeps a plug for open posts out of a shell, and says nothing more', () => {
    const shell = posts('data', grid(1, 7), { family: 'sata-data' });
    expect(refusals(bench([shell], [lead('sw', PAIR)]), 'sw', 'data', [5, 5])).toEqual([
      { code: 'family', plug: 'pin-header', connector: 'sata-data' },
    ]);
  });

  it('lets a 20-position supply plug into a 24-position connector', () => {
    const main = posts('main', grid(2, 12, { pitchMm: 4.2 }), { family: 'main-power' });
    const supply = lead('supply', grid(2, 10, { pitchMm: 4.2 }), { family: 'main-power' });
    expect(refusals(bench([main], [supply]), 'supply', 'main')).toEqual([]);
  });

  it('keeps a 2.54 mm plug off 2.00 mm pins', () => {
    const fine = posts('fine', grid(2, 10, { pitchMm: 2 }));
    expect(refusals(bench([fine], [lead('sw', PAIR)]), 'sw', 'fine')).toEqual([
      { code: 'pitch', plugMm: 2.54, connectorMm: 2 },
    ]);
  });

  it('takes 2.50 mm and 2.54 mm for the same pitch, and 2.55 mm against 2.50 mm too', () => {
    const half = lead('sw', grid(1, 2, { pitchMm: 2.5 }));
    expect(refusals(bench([header], [half]), 'sw', 'jfp')).toEqual([]);
    const wide = posts('wide', grid(1, 2, { pitchMm: 2.55 }));
    expect(refusals(bench([wide], [half]), 'sw', 'wide')).toEqual([]);
  });

  it('minds the other pitch when the plug is turned a quarter on rows that lie further apart', () => {
    const wideRows = posts('wide', grid(2, 5, { rowPitchMm: 5.08 }));
    const build = bench(
      [wideRows],
      [lead('sw', PAIR), lead('wide-sw', grid(1, 2, { pitchMm: 5.08, rowPitchMm: 2.54 }))],
    );
    expect(refusals(build, 'sw', 'wide', [0, 0], 0)).toEqual([]);
    expect(refusals(build, 'sw', 'wide', [0, 0], 90)).toEqual([
      { code: 'pitch', plugMm: 2.54, connectorMm: 5.08 },
    ]);
    expect(refusals(build, 'wide-sw', 'wide', [0, 0], 90)).toEqual([]);
    expect(refusals(build, 'wide-sw', 'wide', [0, 0], 0)).toEqual([
      { code: 'pitch', plugMm: 5.08, connectorMm: 2.54 },
    ]);
  });

  it('goes by the size of the contact where a plug has a single hole', () => {
    const build = bench([posts('fine', grid(1, 4, { pitchMm: 2 }))], [lead('single', grid(1, 1))]);
    expect(refusals(build, 'single', 'fine')).toEqual([{ code: 'pitch', plugMm: 2.54, connectorMm: 2 }]);
  });
});

describe('missing pins and blocked holes', () => {
  const keyed = posts('jfp', grid(1, 3), { pins: ['ground', null, 'ground'] });

  it('refuses a blocked hole over a standing pin: that is the key', () => {
    const build = bench([header], [lead('block', HEADER, { blocked: ['10'] })]);
    expect(refusals(build, 'block', 'jfp')).toEqual([{ code: 'blocked-hole', hole: '10', pin: '10' }]);
  });

  it('lets a blocked hole lie over a missing pin', () => {
    const build = bench([keyed], [lead('led', grid(1, 3), { blocked: ['2'] })]);
    expect(refusals(build, 'led', 'jfp')).toEqual([]);
  });

  it('lets a contact lie over a missing pin, where it meets nothing', () => {
    const build = bench([keyed], [lead('led', grid(1, 3), { contacts: ['1', '2'] })]);
    const fit = fitSeat(build, seat('led', 'jfp'));
    expect(fit.refusals).toEqual([]);
    expect(fit.landings.map(({ hole, state, pin }) => [hole, state, pin?.pin, pin?.missing])).toEqual([
      ['1', 'contact', '1', undefined],
      ['2', 'contact', '2', true],
      ['3', 'empty', '3', undefined],
    ]);
  });

  it('refuses a pin under the body of a plug where the plug has no hole', () => {
    const solidMiddle = grid(1, 3, { numbering: { scheme: 'free', labels: [['1', null, '3']] } });
    const build = bench([posts('jfp', grid(1, 3))], [lead('led', solidMiddle)]);
    expect(refusals(build, 'led', 'jfp')).toEqual([{ code: 'no-hole', pin: '2' }]);
    expect(refusals(bench([keyed], [lead('led', solidMiddle)]), 'led', 'jfp')).toEqual([]);
  });

  it('refuses a seat in which no pin enters any hole', () => {
    const build = bench([keyed], [lead('single', grid(1, 1))]);
    expect(refusals(build, 'single', 'jfp', [0, 1])).toEqual([{ code: 'no-pin' }]);
    expect(refusals(build, 'single', 'jfp', [0, 3])).toEqual([{ code: 'no-pin' }]);
  });
});

describe('two plugs at one place', () => {
  const leads = [lead('power-sw', PAIR), lead('reset', PAIR)];

  it('says which plug is there and on which pins', () => {
    const build = bench([header], leads, [seat('power-sw', 'jfp', [0, 2])]);
    expect(refusals(build, 'reset', 'jfp', [0, 1])).toEqual([
      { code: 'occupied', by: { lead: 'power-sw', plug: 'plug' }, pins: ['3'] },
    ]);
  });

  it('lets plugs sit side by side', () => {
    const build = bench([header], leads, [seat('power-sw', 'jfp', [0, 2])]);
    expect(refusals(build, 'reset', 'jfp', [0, 0])).toEqual([]);
    expect(refusals(build, 'reset', 'jfp', [1, 2])).toEqual([]);
  });

  it('does not take the plug’s own present seat for an obstacle', () => {
    const build = bench([header], leads, [seat('power-sw', 'jfp', [0, 2])]);
    expect(refusals(build, 'power-sw', 'jfp', [0, 2], 180)).toEqual([]);
    expect(refusals(build, 'power-sw', 'jfp', [0, 3])).toEqual([]);
  });

  it('counts empty holes too: the body is the whole rectangle', () => {
    const wide = [lead('speaker', grid(1, 4), { contacts: ['1', '4'] }), lead('reset', PAIR)];
    const build = bench([header], wide, [seat('speaker', 'jfp')]);
    expect(refusals(build, 'reset', 'jfp', [0, 1])).toMatchObject([{ code: 'occupied', pins: ['2', '3'] }]);
  });

  it('sees plugs on neighbouring connectors meet beside the pins', () => {
    const near = posts('near', PAIR, { place: { xMm: 3 * 2.54, yMm: 0, turn: 0 } });
    const build = bench([posts('jfp', PAIR), near], leads, [seat('power-sw', 'near', [0, -1])]);
    expect(refusals(build, 'reset', 'jfp', [0, 1])).toEqual([
      { code: 'occupied', by: { lead: 'power-sw', plug: 'plug' }, pins: [] },
    ]);
    expect(refusals(build, 'reset', 'jfp', [0, 0])).toEqual([]);
  });
});

describe('hanging over the edge', () => {
  const single = posts('led', grid(1, 3));
  const leads = [lead('wide', grid(1, 4))];

  function beside(xMm: number, over: Partial<Connector> = {}): Build {
    const { pins: _, ...rest } = over;
    return bench([single, posts('other', grid(1, 1), { place: { xMm, yMm: 0, turn: 0 }, ...rest })], leads);
  }

  it('is possible where nothing is in the way, and names the holes', () => {
    const fit = fitSeat(bench([single], leads), seat('wide', 'led'));
    expect(fit.refusals).toEqual([]);
    expect(fit.overhang).toEqual(['4']);
  });

  it('is possible beyond the outline of the board', () => {
    expect(refusals(bench([single], leads), 'wide', 'led', [0, -3])).toEqual([]);
  });

  it('is stopped by a pin of the next connector, and not by its gap', () => {
    expect(refusals(beside(3 * 2.54), 'wide', 'led')).toEqual([{ code: 'obstructed', by: 'other' }]);
    expect(refusals(beside(4 * 2.54), 'wide', 'led')).toEqual([]);
    const gap = posts('other', grid(1, 1), { pins: [null], place: { xMm: 3 * 2.54, yMm: 0, turn: 0 } });
    expect(refusals(bench([single, gap], leads), 'wide', 'led')).toEqual([]);
  });

  it('is stopped by the shroud of the next connector even where that has no pin', () => {
    const shrouded = posts('other', grid(1, 2), {
      pins: [null, 'ground'],
      shroud: { walls: [...SIDES] },
      place: { xMm: 3 * 2.54, yMm: 0, turn: 0 },
    });
    expect(refusals(bench([single, shrouded], leads), 'wide', 'led')).toEqual([
      { code: 'obstructed', by: 'other' },
    ]);
  });

  it('does not make an obstacle of headers that stand side by side at one pitch', () => {
    const next = posts('next', grid(1, 3), { place: { xMm: 0, yMm: 2.54, turn: 0 } });
    expect(refusals(bench([single, next], leads), 'wide', 'led', [0, -1])).toEqual([]);
  });

  it('is stopped by a wall on that side, and open on the others', () => {
    const walled = posts('led', grid(1, 3), { shroud: { walls: ['right'] } });
    const build = bench([walled], leads);
    expect(refusals(build, 'wide', 'led')).toEqual([{ code: 'wall', side: 'right', connector: 'led' }]);
    expect(refusals(build, 'wide', 'led', [0, -1])).toEqual([]);
  });

  it('keeps naming the wall of the unturned connector when the connector is turned on its board', () => {
    const place = { xMm: 50, yMm: 50, turn: 270 } as const;
    const walled = posts('led', grid(1, 3), { shroud: { walls: ['right'] }, place });
    expect(refusals(bench([walled], leads), 'wide', 'led')).toEqual([
      { code: 'wall', side: 'right', connector: 'led' },
    ]);
  });

  it('is never possible with walls all round', () => {
    const boxed = posts('box', grid(2, 5), { shroud: { walls: [...SIDES] } });
    const build = bench([boxed], [lead('block', grid(2, 5))]);
    expect(placesOf(build, { lead: 'block', plug: 'plug' })).toEqual([
      seat('block', 'box', [0, 0], 0),
      seat('block', 'box', [1, 4], 180),
    ]);
  });
});

describe('ribs and guides', () => {
  const boxed = (guide?: 'top' | 'bottom') =>
    posts('box', HEADER, { shroud: { walls: [...SIDES], ...(guide && { guide }) } });
  const ribbed = [lead('block', HEADER, { rib: 'bottom' })];

  it('lets the rib into the slot it faces', () => {
    expect(refusals(bench([boxed('bottom')], ribbed), 'block', 'box')).toEqual([]);
  });

  it('refuses the same plug turned by half', () => {
    expect(refusals(bench([boxed('bottom')], ribbed), 'block', 'box', [1, 4], 180)).toEqual([
      { code: 'guide', side: 'bottom', connector: 'box' },
    ]);
    expect(refusals(bench([boxed('top')], ribbed), 'block', 'box', [1, 4], 180)).toEqual([]);
  });

  it('refuses a rib where the walls have no slot', () => {
    expect(refusals(bench([boxed()], ribbed), 'block', 'box')).toEqual([
      { code: 'rib', side: 'bottom', connector: 'box' },
    ]);
  });

  it('lets a ribbed plug onto open posts either way', () => {
    const build = bench([header], ribbed);
    expect(refusals(build, 'block', 'jfp')).toEqual([]);
    expect(refusals(build, 'block', 'jfp', [1, 4], 180)).toEqual([]);
  });

  it('lets a plug without a rib into a slotted box either way: only the rib protects', () => {
    const build = bench([boxed('bottom')], [lead('block', HEADER)]);
    expect(refusals(build, 'block', 'box')).toEqual([]);
    expect(refusals(build, 'block', 'box', [1, 4], 180)).toEqual([]);
  });
});
