import { describe, expect, it } from 'vitest';
import { faultsAsWritten } from '../../../boards/diagnosis/faults/as-written';
import type { Part } from '../../../boards/document/lead';
import { leadOf } from '../../../boards/document/lookup';
import { demo } from '../findings/demo';
import { bench } from '../findings/harness';
import { casesOf, chanceOfSeeing, endsOf, faultOf, sumOf, unlistedOf } from './faults-by-name';

const board = () => bench().header('fan-1x4', 'cpu').header('fan-1x4', 'rear');
const STOPPED = new Set(['fan-stops-it', 'fan-complained-of', 'runs']);

describe('fans that a build has', () => {
  it('are worn or have an open speed wire by their names; only at the watched header does the board miss it', () => {
    const build = demo('wired');
    expect(casesOf(build, 'fan-wire-open').map(({ name }) => name)).toEqual([
      'The speed wire of CPU fan is open.',
      'The speed wire of Rear fan is open.',
    ]);
    // A board goes off, complains or goes on without a speed there (common practice, no source).
    expect(endsOf(faultOf(build, 'cpu-fan/fan/speed-wire-open'))).toEqual(STOPPED);
    expect(endsOf(faultOf(build, 'rear-fan/fan/speed-wire-open'))).toEqual(new Set(['runs']));
    expect(casesOf(build, 'fan-worn').map(({ lead }) => lead)).toEqual(['cpu-fan', 'rear-fan']);
  });

  it('have no speed wire to be open where there are two wires', () => {
    const build = board().lead('fan-1x2', 'old').seat('old', 'cpu', '1').build;
    expect(casesOf(build, 'fan-wire-open')).toEqual([]);
    expect(unlistedOf(build, 'fan-wire-open')).toBeCloseTo(0.1, 12);
  });

  it('leave hubs and splitters as frequent as ever where the build says nothing but its fans, and hardly where it lists its units', () => {
    const fans = board().lead('fan-1x4', 'a').seat('a', 'cpu', '1');
    for (const id of ['fan-hub', 'fan-splitter']) {
      expect(unlistedOf(fans.build, id)).toBe(1);
      expect(unlistedOf(fans.unit('drive', 'disk').build, id)).toBeCloseTo(0.1, 12);
    }
  });
});

describe('a fan hub', () => {
  const hub = () =>
    board()
      .unit('supply-modular-ash', 'own')
      .unit('fan-hub-supply', 'hub')
      .lead('fan-1x4', 'first')
      .seat('own-sata', 'own-drives-1', '1', { plug: 'supply' })
      .seat('first', 'hub-fan-1', '1');
  const whole = () =>
    hub()
      .seat('own-sata', 'hub-power', '1', { plug: 'first' })
      .seat('hub-tail', 'cpu', '1', { plug: 'header' });

  it('without its supply turns no fan, and the board hears none; without its tail its fans turn unheard', () => {
    const { build } = whole();
    const unfed = faultOf(build, 'own-sata/first/off/');
    expect(unfed.name).toBe('SATA cable of OWN is not in at POWER of HUB.');
    expect(unfed.cause).toBe('fan-hub');
    expect(endsOf(unfed)).toEqual(STOPPED);
    expect(chanceOfSeeing(unfed, 'fan-stands')).toBeGreaterThan(0.8);
    const off = faultOf(build, 'hub-tail/header/off/');
    expect(off.off).toEqual({ lead: 'hub-tail', plug: 'header' });
    expect(chanceOfSeeing(off, 'fan-stands')).toBeLessThan(0.1);
    expect(chanceOfSeeing(off, 'fan-full-speed')).toBeGreaterThan(0.4);
    expect(faultOf(build, 'hub-tail/header/other-header').name).toContain('another header than CPU');
  });

  it('whose tail sits beside its place is fed by nothing, and said to be', () => {
    const beside = (at: string) =>
      board()
        .unit('fan-hub-header', 'hub')
        .lead('fan-1x4', 'first')
        .seat('first', 'hub-fan-1', '1')
        .seat('hub-tail', 'cpu', at, { plug: 'header' }).build;
    const unfed = faultOf(beside('2'), 'unfed/hub');
    expect(unfed.name).toBe('Nothing feeds HUB by the plugs as they sit.');
    expect(chanceOfSeeing(unfed, 'fan-stands')).toBeGreaterThan(0.8);
    expect(faultsAsWritten(beside('1')).map(({ id }) => id)).not.toContain('unfed/hub');
  });

  it('that the build itself leaves unfed weighs as much as everything else together', () => {
    const { build } = hub().seat('hub-tail', 'cpu', '1', { plug: 'header' });
    const faults = faultsAsWritten(build);
    const there = faults.filter(({ id }) => id === 'off/hub-power');
    expect(there.map(({ name }) => name)).toEqual(['Nothing feeds HUB.']);
    expect(sumOf(there) / sumOf(faults)).toBeCloseTo(0.5, 9);
  });

  it('is asked for too much only where the sum of its fans says so', () => {
    // Four fans of 0.3 A on a header that may carry 1 A, over a hub without a supply of its own.
    const HUNGRY: Partial<Part> = { fan: { runningAmps: 0.3, startAmps: 0.4, cools: 'case' } };
    const rated = { hub: { fedBy: 'header', amps: 4.5 } } as const;
    const with4 = (change: Partial<Part>) => {
      let made = bench()
        .connector({ ...headerOf(), rating: { amps: 1 } })
        .unit('fan-hub-header', 'hub', rated)
        .seat('hub-tail', 'cpu', '1', { plug: 'header' });
      for (const at of ['1', '2', '3', '4']) {
        made = made.lead('fan-1x4', `fan-${at}`);
        const lead = leadOf(made.build, `fan-${at}`);
        const { leads, ...rest } = made.build.case;
        const changed = leads.map((each) =>
          each === lead ? { ...each, parts: each.parts.map((part) => ({ ...part, ...change })) } : each,
        );
        made = made.with({ case: { ...rest, leads: changed } }).seat(`fan-${at}`, `hub-fan-${at}`, '1');
      }
      return made.build;
    };
    const over = faultsAsWritten(with4(HUNGRY)).filter(({ id }) => id === 'overloaded/hub');
    expect(over.map(({ name }) => name)).toEqual(['The fans on HUB ask more of it than it may carry.']);
    const modest = with4({ fan: { runningAmps: 0.1, startAmps: 0.2, cools: 'case' } });
    expect(casesOf(modest, 'fan-hub').some(({ id }) => id === 'overloaded/hub')).toBe(false);
  });
});

const headerOf = () => {
  const [header] = bench().header('fan-1x4', 'cpu').build.board.connectors;
  if (!header) throw new Error('A bench has the header that it was given');
  return header;
};

describe('a splitter', () => {
  it('that joins no two speed signals by its wires is only ever one that asks too much of its header', () => {
    const { build } = board()
      .lead('fan-1x4', 'a')
      .lead('fan-splitter', 'split')
      .seat('split', 'rear', '1', { plug: 'board' });
    const [own, ...others] = casesOf(build, 'fan-splitter');
    expect(others).toEqual([]);
    expect(own?.name).toBe('SPLIT asks more of REAR than it may carry.');
    expect(own && chanceOfSeeing(own, 'fan-speed-wrong')).toBeLessThan(0.1);
  });

  it('with a speed wire in each branch joins them', () => {
    const made = board().lead('fan-1x4', 'a').lead('fan-splitter', 'split');
    const { leads, ...rest } = made.build.case;
    const joined = leads.map((lead) =>
      lead.id === 'split'
        ? { ...lead, wires: [...lead.wires, { from: 'board.3', to: 'second.3', colour: 'green' as const }] }
        : lead,
    );
    const { build } = made
      .with({ case: { ...rest, leads: joined } })
      .seat('split', 'rear', '1', { plug: 'board' });
    const [own] = casesOf(build, 'fan-splitter');
    expect(own?.name).toBe('SPLIT joins two speed signals on REAR.');
    expect(own && chanceOfSeeing(own, 'fan-speed-wrong')).toBeGreaterThan(0.5);
  });
});
