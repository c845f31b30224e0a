import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import type { LeadCable } from '../../../boards/document/cable';
import type { Lead } from '../../../boards/document/lead';
import { leadOf } from '../../../boards/document/lookup';
import type { Tray } from '../../../boards/document/tray';
import { labelOf } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { bench, grid, lead, partLead, posts } from '../fixtures/bench';
import { done, toldNo } from './carried-out';

const TRAY: Tray = {
  widthMm: 400,
  heightMm: 420,
  points: [{ id: 'low', kind: 'tie', xMm: 40, yMm: 380 }],
  openings: [{ id: 'right', xMm: 230, yMm: 60, widthMm: 20, heightMm: 40, edge: 'grommet' }],
  bays: [],
  supply: { id: 'supply', xMm: 10, yMm: 340, widthMm: 150, heightMm: 70 },
  paths: [
    { id: 'behind', from: 'supply', to: 'right', lengthMm: 300, side: 'back' },
    { id: 'along', from: 'supply', to: 'low', lengthMm: 50, side: 'front' },
  ],
};

const plain = lead('drives', grid(1, 4), { contacts: ['1', '2'] });
const chain: Lead = {
  ...plain,
  plugs: [...plain.plugs, ...plain.plugs.slice(0, 1).map((plug) => ({ ...plug, id: 'second' }))],
};
const button = partLead('button', 'power-switch', grid(1, 2), { a: '1', b: '2' });
const onTheBench: Build = {
  ...bench([posts('panel', grid(2, 5))], [chain, button]),
  case: { ...bench([], [chain, button]).case, tray: TRAY },
};

const MEASURED: LeadCable = {
  diameterMm: 6,
  slackMm: 20,
  start: 'supply',
  runs: [
    { to: 'plug', lengthMm: 500 },
    { from: 'plug', to: 'second', lengthMm: 150 },
  ],
};

const measure = (cable: LeadCable | null): Command => ({
  name: 'measure-lead',
  args: { lead: 'drives', cable },
});
const lay = (...paths: string[]): Command => ({
  name: 'lay-runs',
  args: { routes: [{ lead: 'drives', plug: 'plug', paths }], off: [] },
});
const pin = (pinned: boolean): Command => ({
  name: 'pin-run',
  args: { lead: 'drives', plug: 'plug', pinned },
});

describe('a lead measured as a cable', () => {
  it('keeps its thickness and the lengths of its runs, and is measured again', () => {
    const once = done(onTheBench, measure(MEASURED));
    expect(leadOf(once, 'drives')).toEqual({ ...chain, cable: MEASURED });
    const thinner = done(once, measure({ ...MEASURED, diameterMm: 5 }));
    expect(leadOf(thinner, 'drives')?.cable?.diameterMm).toBe(5);
    expect(labelOf(onTheBench, measure(MEASURED))).toBe('Measure DRIVES');
    expect(labelOf(once, measure(MEASURED))).toBe('Change the measures of DRIVES');
    expect(labelOf(once, measure(null))).toBe('Forget the measures of DRIVES');
  });

  it('is forgotten together with the ways of its runs', () => {
    const laid = done(onTheBench, measure(MEASURED), lay('behind'));
    const fewer = done(laid, measure({ ...MEASURED, runs: [{ to: 'second', lengthMm: 400 }] }));
    expect(fewer.routes).toBeUndefined();
    expect(done(laid, measure(null))).toEqual(onTheBench);
  });

  it('is refused where its runs do not hang together', () => {
    const runs = (...given: LeadCable['runs']) =>
      toldNo(onTheBench, measure({ ...MEASURED, runs: [...given] }));
    expect(runs({ to: 'third', lengthMm: 10 })).toBe('DRIVES has no plug “third”.');
    expect(runs({ to: 'plug', lengthMm: 10 }, { to: 'plug', lengthMm: 20 })).toBe(
      'Two runs of DRIVES lead to DRIVES. Keep one: a plug is the far end of one run at most.',
    );
    expect(runs({ from: 'plug', to: 'plug', lengthMm: 10 })).toBe(
      'The run to DRIVES comes back to where the cable has been. Let it begin at another plug.',
    );
    expect(
      runs({ from: 'second', to: 'plug', lengthMm: 10 }, { from: 'plug', to: 'second', lengthMm: 10 }),
    ).toBe('The run to DRIVES comes back to where the cable has been. Let it begin at another plug.');
  });

  it('is refused with a length of nothing or less', () => {
    for (const [lengthMm, found] of [
      [0, '0'],
      [-40, '-40'],
    ] as const)
      expect(toldNo(onTheBench, measure({ ...MEASURED, runs: [{ to: 'plug', lengthMm }] }))).toBe(
        `“cable.runs[0].lengthMm” cannot be kept: it has to be a finite number above 0, at most 20,000, and is ${found}.`,
      );
  });

  it('keeps a run to each plug when a block is split, along the way of the block', () => {
    const measured = done(onTheBench, {
      name: 'measure-lead',
      args: { lead: 'button', cable: { ...MEASURED, runs: [{ to: 'plug', lengthMm: 450 }] } },
    });
    const laid = done(measured, {
      name: 'lay-runs',
      args: { routes: [{ lead: 'button', plug: 'plug', paths: ['behind'] }], off: [] },
    });
    const split = done(laid, { name: 'split-plug', args: { lead: 'button', plug: 'plug' } });
    const { plugs = [], cable } = leadOf(split, 'button') ?? {};
    expect(plugs).toHaveLength(2);
    expect(cable?.runs).toEqual(plugs.map(({ id }) => ({ to: id, lengthMm: 450 })));
    expect(split.routes).toEqual(plugs.map(({ id }) => ({ lead: 'button', plug: id, paths: ['behind'] })));
  });
});

describe('ways through the tray', () => {
  const measured = done(onTheBench, measure(MEASURED));

  it('are chosen, changed and taken off, many in one step', () => {
    const both: Command = {
      name: 'lay-runs',
      args: {
        routes: [
          { lead: 'drives', plug: 'plug', paths: ['behind'] },
          { lead: 'drives', plug: 'second', paths: ['along'], pinned: true },
        ],
        off: [],
      },
    };
    const laid = done(measured, both);
    expect(laid.routes).toEqual(both.args.routes);
    expect(labelOf(measured, both)).toBe('Lay 2 cables');
    expect(done(laid, both)).toBe(laid);
    const other = done(laid, lay('along'));
    expect(other.routes?.map(({ plug, paths }) => [plug, ...paths])).toEqual([
      ['plug', 'along'],
      ['second', 'along'],
    ]);
    const off: Command = {
      name: 'lay-runs',
      args: {
        routes: [],
        off: [
          { lead: 'drives', plug: 'plug' },
          { lead: 'drives', plug: 'second' },
        ],
      },
    };
    expect(labelOf(laid, off)).toBe('Take the way off 2 cables');
    expect(done(laid, off)).toEqual(measured);
  });

  it('are refused for what is not there', () => {
    expect(toldNo(onTheBench, lay('behind'))).toBe(
      'No run of a measured cable leads to DRIVES. Measure DRIVES first.',
    );
    expect(toldNo(measured, lay('behind', 'up'))).toBe('There is no path “up” in the tray.');
    const twice: Command = {
      name: 'lay-runs',
      args: {
        routes: [{ lead: 'drives', plug: 'plug', paths: [] }],
        off: [{ lead: 'drives', plug: 'plug' }],
      },
    };
    expect(toldNo(measured, twice)).toBe('DRIVES is named twice. Say once what becomes of it.');
  });

  it('are pinned and let go', () => {
    expect(toldNo(measured, pin(true))).toBe('No way is chosen for DRIVES yet. Choose one first.');
    const laid = done(measured, lay('behind'));
    const pinned = done(laid, pin(true));
    expect(pinned.routes).toEqual([{ lead: 'drives', plug: 'plug', paths: ['behind'], pinned: true }]);
    expect(labelOf(laid, pin(true))).toBe('Pin the way of DRIVES');
    expect(done(pinned, pin(true))).toBe(pinned);
    expect(done(pinned, pin(false))).toEqual(laid);
  });

  it('go with their lead', () => {
    const laid = done(measured, lay('behind'));
    expect(done(laid, { name: 'remove-lead', args: { lead: 'drives' } }).routes).toBeUndefined();
  });
});
