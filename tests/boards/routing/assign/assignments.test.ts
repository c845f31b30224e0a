import { describe, expect, it } from 'vitest';
import type { Build, Seat } from '../../../../boards/document/build';
import type { Connector } from '../../../../boards/document/connector';
import type { Lead } from '../../../../boards/document/lead';
import type { FanRating, Rating } from '../../../../boards/document/rating';
import type { Unit } from '../../../../boards/document/unit';
import { assignmentsOf } from '../../../../boards/routing/assign/assignments';
import { movesTo } from '../../../../boards/routing/assign/moves';
import { bench, grid, partLead, posts } from '../../fixtures/bench';

/** Pin order: 4-Wire PWM Controlled Fans Specification rev. 1.3, table 1. */
function header(id: string, xMm: number, rating?: Rating): Connector {
  const plain = posts(id, grid(1, 4), {
    pins: ['ground', 'fan-supply', 'fan-tach', 'fan-pwm'],
    place: { xMm, yMm: 10, turn: 0 },
  });
  return rating ? { ...plain, rating } : plain;
}

function fan(id: string, figures: FanRating): Lead {
  const plain = partLead(id, 'fan', grid(1, 4), { ground: '1', supply: '2', tach: '3', pwm: '4' });
  return { ...plain, parts: [{ id: 'part', kind: 'fan', fan: figures }] };
}

const CASE_FAN = { runningAmps: 0.3, startAmps: 0.6, cools: 'case' } as const;

function on(lead: string, connector: string, plug = 'plug'): Seat {
  return { lead, plug, connector, at: [0, 0], turn: 0 };
}

/** Data segment: Serial ATA 1.0a, from a hardware handbook, table 13-8. */
function dataSocket(id: string, over: Omit<Partial<Connector>, 'pins'> = {}): Connector {
  return posts(id, grid(1, 7, { pitchMm: 1.27 }), {
    family: 'sata-data',
    pins: ['ground', 'sata-a-plus', 'sata-a-minus', 'ground', 'sata-b-minus', 'sata-b-plus', 'ground'],
    ...over,
  });
}

function dataCable(id: string): Lead {
  const end = (plug: string) => ({
    id: plug,
    print: '',
    family: 'sata-data',
    grid: grid(1, 7, { pitchMm: 1.27 }),
  });
  return {
    id,
    name: id,
    parts: [],
    plugs: [end('board'), end('drive')],
    wires: [1, 2, 3, 4, 5, 6, 7].map((at) => ({ from: `board.${at}`, to: `drive.${at}`, colour: 'red' })),
  };
}

function drive(id: string, lineRateGbps: 3 | 6): Unit {
  return { id, name: id, kind: 'drive', drive: { lineRateGbps }, connectors: [dataSocket(`${id}-data`)] };
}

describe('fans of a build', () => {
  const cooler = fan('cooler', { runningAmps: 0.2, startAmps: 0.5, cools: 'processor' });
  const headers = [
    header('cpu-fan', 10, { amps: 2, watched: true }),
    header('fan-1', 40, { amps: 1 }),
    header('fan-2', 70, { amps: 1 }),
  ];

  const hub: Unit = {
    id: 'hub',
    name: 'Hub',
    kind: 'hub',
    hub: { fedBy: 'header', amps: 2 },
    connectors: ['hub-in', 'hub-1', 'hub-2'].map((id, at) => header(id, 30 * at)),
  };

  /** What joins the hub to a header. */
  function tail(): Lead {
    const plain = partLead('tail', 'fan', grid(1, 4), {});
    return { ...plain, parts: [], plugs: plain.plugs.flatMap((plug) => [plug, { ...plug, id: 'far' }]) };
  }

  function build(seats: readonly Seat[], over: Partial<Build> = {}): Build {
    return {
      ...bench(headers, [cooler, fan('front', CASE_FAN), fan('rear', CASE_FAN)], [...seats]),
      ...over,
    };
  }

  it('go where they are best, by moves that leave alone what is right already', () => {
    const wrong = build([on('cooler', 'fan-1'), on('front', 'cpu-fan')]);
    const found = assignmentsOf(wrong);
    expect(Object.fromEntries(found.fans.fans.map((each) => [each.fan, each.header]))).toMatchObject({
      cooler: 'cpu-fan',
    });
    const moves = movesTo(wrong, found);
    expect(moves.missing).toEqual([]);
    const after: Build = { ...wrong, seats: [...moves.seats] };
    expect(movesTo(after, assignmentsOf(after))).toEqual({ seats: [], off: [], missing: [] });
    // Four holes over four pins, rib and all, is one way only.
    expect(moves.seats.every(({ at, turn }) => at[0] === 0 && at[1] === 0 && turn === 0)).toBe(true);
  });

  it('stay where the person put them, and say what that comes to', () => {
    const pinned = build([], { choices: [{ kind: 'header', of: 'rear', on: 'fan-2' }] });
    expect(assignmentsOf(pinned).fans.fans.find((each) => each.fan === 'rear')?.header).toBe('fan-2');
  });

  it('load their headers as they are plugged in now, a hub with the sum of its fans', () => {
    const hubbed = build(
      [on('tail', 'fan-1'), on('tail', 'hub-in', 'far'), on('front', 'hub-1'), on('rear', 'hub-2')],
      { units: [hub], extras: [tail()] },
    );
    const [load, ...more] = assignmentsOf(hubbed).loadsNow;
    // 0.6 A and 0.6 A at the start on a header for 1 A.
    expect(load).toMatchObject({
      ...{ header: 'fan-1', startA: 1.2, runningA: 0.6, ratedA: 1, from: 'header' },
      fans: ['front', 'rear'],
    });
    expect([load?.hub?.unit, more]).toEqual([hub, []]);
  });

  it('give the outlet that reports the speed to the fan of the processor, and get another for it', () => {
    const seats = [on('tail', 'cpu-fan'), on('tail', 'hub-in', 'far'), on('front', 'hub-1')];
    const only = bench([header('cpu-fan', 10, { amps: 2, watched: true })], [fan('front', CASE_FAN), cooler]);
    const exchanged: Build = {
      ...only,
      units: [{ ...hub, hub: { fedBy: 'header', amps: 2, speedOutlet: 'hub-1' } }],
      extras: [tail()],
      seats: [...seats, on('cooler', 'hub-2')],
    };
    const { seats: moved, off, missing } = movesTo(exchanged, assignmentsOf(exchanged));
    expect(moved.map(({ lead, connector }) => [lead, connector])).toEqual([
      ['front', 'hub-2'],
      ['cooler', 'hub-1'],
    ]);
    expect([off, missing]).toEqual([[], []]);
  });

  it('are taken as usual where no label was read, and that is said', () => {
    const unread = build([]);
    const bare = { ...unread, case: { ...unread.case, leads: [partLead('side', 'fan', grid(1, 4), {})] } };
    expect(assignmentsOf(bare).assumed).toContainEqual({ code: 'fan', lead: 'side' });
    expect(assignmentsOf(unread).assumed).toEqual([]);
  });
});

describe('drives of a build', () => {
  const ports = [
    dataSocket('sata-1', { place: { xMm: 10, yMm: 50, turn: 0 }, rating: { lineRateGbps: 3 } }),
    dataSocket('sata-2', {
      place: { xMm: 40, yMm: 50, turn: 0 },
      rating: { lineRateGbps: 6, offWith: ['upper'] },
    }),
    dataSocket('sata-3', { place: { xMm: 70, yMm: 50, turn: 0 }, rating: { lineRateGbps: 6 } }),
  ];

  function build(units: readonly Unit[]): Build {
    const plain = bench(ports, [], []);
    return {
      ...plain,
      board: { ...plain.board, drivePlaces: [{ id: 'upper', name: 'M.2 upper' }] },
      extras: [dataCable('first'), dataCable('second')],
      units: [...units],
      seats: [
        on('first', 'fast-data', 'drive'),
        on('first', 'sata-1', 'board'),
        on('second', 'slow-data', 'drive'),
      ],
    };
  }

  it('have the fast one on a fast port, and its cable moved there', () => {
    const slowed = build([drive('fast', 6), drive('slow', 3)]);
    const found = assignmentsOf(slowed);
    expect(found.ports.drives.map(({ drive: id, port }) => [id, port])).toEqual([
      ['fast', 'sata-2'],
      ['slow', 'sata-1'],
    ]);
    const { seats, missing } = movesTo(slowed, found);
    expect(missing).toEqual([]);
    expect(seats.map(({ lead, plug, connector }) => [lead, plug, connector])).toEqual([
      ['first', 'board', 'sata-2'],
      ['second', 'board', 'sata-1'],
    ]);
  });

  it('do without a port that an M.2 place in use switches off (by the manual of the board)', () => {
    const m2: Unit = { id: 'card', name: 'Card', kind: 'drive', at: 'upper', connectors: [] };
    const found = assignmentsOf(build([drive('fast', 6), drive('slow', 3), m2]));
    expect(found.ports.drives.find(({ drive: id }) => id === 'fast')?.port).toBe('sata-3');
  });

  it('say which has no cable', () => {
    const bare = { ...build([drive('fast', 6)]), seats: [] };
    expect(movesTo(bare, assignmentsOf(bare)).missing).toEqual([{ of: 'fast', code: 'no-lead' }]);
  });
});

/** Power segment: Serial ATA 1.0a, from a hardware handbook, table 13-7; its three contacts of 12 V are 13 to 15. */
function poweredDrive(id: string, startAmps: number): Unit {
  const socket: Connector = {
    ...posts(`${id}-power`, grid(1, 15, { pitchMm: 1.27 }), { family: 'sata-power' }),
    pins: [13, 14, 15].map((pin) => ({ pin: String(pin), signal: 'supply-12v', belongsTo: 'drive-power' })),
  };
  return { id, name: id, kind: 'drive', drive: { lineRateGbps: 6, startAmps }, connectors: [socket] };
}

/** A cable from an outlet of the supply to two drives. */
function branchLead(id: string): Lead {
  const end = (plug: string) => ({
    id: plug,
    print: '',
    family: 'sata-power',
    grid: grid(1, 15, { pitchMm: 1.27 }),
  });
  const supply = { id: 'supply', print: '', family: 'supply-side', grid: grid(1, 4) };
  const wires = ['first', 'second'].map((to) => ({
    from: 'supply.1',
    to: `${to}.13`,
    colour: 'yellow' as const,
  }));
  return { id, name: id, parts: [], plugs: [supply, end('first'), end('second')], wires };
}

describe('drives on the cables of a supply', () => {
  const outlet = (id: string, amps: number): Connector => ({
    ...posts(id, grid(1, 4), { family: 'supply-side' }),
    rating: { amps },
  });
  const supply: Unit = {
    id: 'psu',
    name: 'Supply',
    kind: 'supply',
    connectors: [outlet('out-1', 4), outlet('out-2', 4)],
  };

  function build(drives: readonly Unit[], seats: readonly Seat[]): Build {
    return {
      ...bench([], [], []),
      extras: [branchLead('left'), branchLead('right')],
      units: [supply, ...drives],
      seats: [on('left', 'out-1', 'supply'), on('right', 'out-2', 'supply'), ...seats],
    };
  }

  it('are shared out so that no cable carries more than its outlet gives when all start', () => {
    // 2.5 A each is more than one outlet of 4 A gives to two of them.
    const both = build(
      [poweredDrive('upper', 2.5), poweredDrive('lower', 2.5)],
      [on('left', 'upper-power', 'first'), on('left', 'lower-power', 'second')],
    );
    const found = assignmentsOf(both);
    expect(found.branches.branches.map(({ loadA }) => loadA)).toEqual([2.5, 2.5]);
    const moves = movesTo(both, found);
    expect(moves.missing).toEqual([]);
    expect(moves.seats.map(({ lead }) => lead)).toEqual(['right']);
    expect(moves.off).toHaveLength(1);
  });

  it('stay together on one where it carries them', () => {
    const calm = build(
      [poweredDrive('upper', 1.5), poweredDrive('lower', 1.5)],
      [on('left', 'upper-power', 'first'), on('left', 'lower-power', 'second')],
    );
    expect(movesTo(calm, assignmentsOf(calm))).toEqual({ seats: [], off: [], missing: [] });
  });

  it('are left without one where no plug and no current is left, and that is said', () => {
    const three = build([poweredDrive('a', 2.5), poweredDrive('b', 2.5), poweredDrive('c', 2.5)], []);
    const { drives } = assignmentsOf(three).branches;
    expect(drives.filter(({ branch }) => branch === undefined)).toHaveLength(1);
  });
});
