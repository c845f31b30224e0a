import fc from 'fast-check';
import { expect, test } from 'vitest';
import { RUNNING } from '../../../boards/circuit/machine-state';
import { arrivalAt } from '../../../boards/circuit/readings/arrivals';
import type { Build, Seat } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import type { Lead } from '../../../boards/document/lead';
import type { Unit } from '../../../boards/document/unit';
import { rowAfterRow } from '../../../boards/library/grids';
import { plug } from '../../../boards/library/plug-and-wires';
import type { SignalId } from '../../../boards/signals/signals';
import { Dice } from '../dice';
import { bench } from '../findings/harness';

const RAILS: readonly SignalId[] = ['supply-12v', 'supply-5v', 'supply-3v3', 'ground'];
const VOLTS: Readonly<Record<string, number>> = {
  'supply-12v': 12,
  'supply-5v': 5,
  'supply-3v3': 3.3,
  ground: 0,
};
const PINS = ['1', '2', '3', '4', '5', '6', '7', '8'];

function connector(id: string, family: string, signals: readonly SignalId[]): Connector {
  return {
    id,
    print: id,
    title: id,
    family,
    grid: rowAfterRow(4),
    pins: PINS.map((pin, at) => ({ pin, signal: signals[at] ?? 'ground' })),
    place: { xMm: 0, yMm: 0, turn: 0 },
  };
}

/** A cable with any wires at all: some holes empty, some with two. */
function cable(id: string, dice: Dice): Lead {
  const wires = PINS.filter(() => !dice.oneIn(4)).map((hole) => ({
    from: `near.${dice.oneIn(3) ? (dice.pick(PINS) ?? hole) : hole}`,
    to: `far.${dice.oneIn(3) ? (dice.pick(PINS) ?? hole) : hole}`,
    colour: 'red' as const,
  }));
  const grid = rowAfterRow(4);
  return { id, name: id, parts: [], plugs: [plug('near', '', grid), plug('far', '', grid)], wires };
}

interface Machine {
  readonly build: Build;
  readonly outlet: readonly SignalId[];
  readonly first: Lead;
  readonly second: Lead;
}

/** A supply, a cable to a hub, and another from the hub to a device; every pin whatever chance gives it. */
function machine(seed: number): Machine {
  const dice = new Dice(seed);
  const any = () => PINS.map(() => dice.pick(RAILS) ?? 'ground');
  const [outlet, hubIn, hubOut, taken] = [any(), any(), any(), any()];
  const units: Unit[] = [
    { id: 'psu', name: 'psu', kind: 'supply', connectors: [connector('out', 'supply-side', outlet)] },
    {
      id: 'hub',
      name: 'hub',
      kind: 'hub',
      connectors: [connector('hub-in', 'pin-header', hubIn), connector('hub-out', 'pin-header', hubOut)],
    },
    { id: 'disk', name: 'disk', kind: 'drive', connectors: [connector('in', 'sata-power', taken)] },
  ];
  const [first, second] = [cable('first', dice), cable('second', dice)];
  const seat = (lead: string, end: string, on: string): Seat => ({
    lead,
    plug: end,
    connector: on,
    at: [0, 0],
    turn: 0,
  });
  const seats = [
    seat('first', 'near', 'out'),
    seat('first', 'far', 'hub-in'),
    seat('second', 'near', 'hub-out'),
    seat('second', 'far', 'in'),
  ];
  return { build: bench().with({ units, extras: [first, second], seats }).build, outlet, first, second };
}

/** The same by a table of what touches what, closed again and again until nothing is added: slow, and plain. */
function outletsReached({ build, first, second }: Machine, pin: string, beyond: boolean): readonly string[] {
  const hub = build.units?.[1]?.connectors ?? [];
  const pairs: [string, string][] = [];
  const join = (lead: Lead, near: string, far: string) => {
    for (const { from, to } of lead.wires) pairs.push([from.replace('near', near), to.replace('far', far)]);
  };
  join(first, 'out', 'hub-in');
  join(second, 'hub-out', 'in');
  const ofHub = hub.flatMap(({ id, pins }) =>
    pins.map((each) => ({ at: `${id}.${each.pin}`, is: each.signal })),
  );
  for (const one of ofHub) for (const other of ofHub) if (one.is === other.is) pairs.push([one.at, other.at]);
  const reached = new Set([`in.${pin}`]);
  for (let before = 0; before !== reached.size; ) {
    before = reached.size;
    // An outlet is where the search ends: what else hangs on it is fed by it.
    const open = (at: string) => reached.has(at) && (beyond || !at.startsWith('out.'));
    for (const [one, other] of pairs) {
      if (open(one)) reached.add(other);
      if (open(other)) reached.add(one);
    }
  }
  return [...reached].filter((at) => at.startsWith('out.')).toSorted();
}

test('every pin of a device is followed to the same outlet pins as by a table of all wires', () => {
  let followed = 0;
  let level = 0;
  fc.assert(
    fc.property(fc.nat(), (seed) => {
      const made = machine(seed);
      for (const pin of PINS) {
        const wanted = outletsReached(made, pin, false);
        const { from, volts } = arrivalAt(made.build, { connector: 'in', pin });
        expect(from.map((each) => `${each.connector}.${each.pin}`).toSorted()).toEqual(wanted);
        followed += wanted.length;
        const joined = outletsReached(made, pin, true);
        const rails = new Set(joined.map((at) => made.outlet[PINS.indexOf(at.slice(4))] ?? 'ground'));
        const [rail, ...others] = rails;
        if (rail === undefined || others.length > 0) continue;
        // Where the wires join nothing else to it, a rail arrives whole: the device is away.
        expect(volts(RUNNING)?.usual).toBeCloseTo(VOLTS[rail] ?? 0, 1);
        level += 1;
      }
    }),
    { seed: 20_261_126, numRuns: 400 },
  );
  expect(followed).toBeGreaterThan(1_000);
  expect(level).toBeGreaterThan(300);
});
