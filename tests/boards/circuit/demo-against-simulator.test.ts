import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { USUAL } from '../../../boards/circuit/corner';
import { type Device, GROUND, type Netlist } from '../../../boards/circuit/device';
import { elementsOf, netlistOf } from '../../../boards/circuit/elements';
import { groupsOf, solvedGroup } from '../../../boards/circuit/groups';
import { Groups } from '../../../boards/circuit/islands';
import { solve } from '../../../boards/circuit/solve';
import { type Build, BuildZ } from '../../../boards/document/build';
import { leadsOf, samePlug } from '../../../boards/document/lookup';
import { jointsOf } from '../../../boards/fit/joints';
import { placesOf } from '../../../boards/fit/places';
import { type Reference, startReference } from '../../reference/circuit-simulator';

/**
 * Every single seat, right or wrong, of every plug of the demo, in every machine state: our answer
 * beside that of a general circuit simulator (ngspice) for the same devices.
 */
const WIRED: Build = BuildZ.parse(
  JSON.parse(readFileSync(new URL('../../../boards/library/demo/wired.build.json', import.meta.url), 'utf8')),
);

let reference: Reference;

beforeAll(async () => {
  reference = await startReference();
}, 60_000);

/** Node names by order of appearance, so that the same circuit elsewhere on the board is the same text. */
function anonymous(netlist: Netlist): Netlist {
  const names = new Map([[GROUND, GROUND]]);
  const nameOf = (node: string) => {
    const known = names.get(node) ?? `n${names.size}`;
    names.set(node, known);
    return known;
  };
  return netlist.map((device, i) => ({ ...device, id: `d${i}`, a: nameOf(device.a), b: nameOf(device.b) }));
}

/** Every different circuit that one plug, put anywhere it fits, makes in any state. */
function everyCircuit(): Netlist[] {
  const circuits = new Map<string, Netlist>();
  for (const lead of leadsOf(WIRED)) {
    for (const plug of lead.plugs) {
      const ref = { lead: lead.id, plug: plug.id };
      const others = WIRED.seats.filter((seat) => !samePlug(seat, ref));
      for (const seat of placesOf({ ...WIRED, seats: others }, ref)) {
        const build = { ...WIRED, seats: [...others, seat] };
        for (const group of groupsOf(elementsOf(build, jointsOf(build)))) {
          for (const state of solvedGroup(group).states) {
            const netlist = anonymous(netlistOf(group.elements, state, USUAL));
            circuits.set(JSON.stringify(netlist), netlist);
          }
        }
      }
    }
  }
  return [...circuits.values()];
}

/** Nodes held by something better than the leakage of a junction that does not conduct. */
function heldNodes(netlist: Netlist): ReadonlySet<string> {
  const ways = new Groups();
  for (const device of netlist) {
    const open =
      device.kind === 'diode' ||
      device.kind === 'current' ||
      (device.kind === 'switch' && !device.closed) ||
      (device.kind === 'open-drain' && !device.on);
    if (!open) ways.join(device.a, device.b);
  }
  const nodes = new Set(netlist.flatMap(({ a, b }) => [a, b]));
  return new Set([...nodes].filter((node) => ways.rootOf(node) === ways.rootOf(GROUND)));
}

/** A fuse as it is after it has decided. */
function decided(netlist: Netlist, tripped: ReadonlySet<string>): Netlist {
  return netlist.map((device): Device => {
    if (device.kind !== 'fuse') return device;
    const { id, a, b, coldOhms, trippedOhms } = device;
    return { kind: 'resistor', id, a, b, ohms: tripped.has(id) ? trippedOhms : coldOhms };
  });
}

test('every seat of every plug of the demo, in every state, within 1 mV or 0.1 %', async () => {
  const circuits = everyCircuit();
  expect(circuits.length).toBeGreaterThan(300);
  let compared = 0;
  for (const netlist of circuits) {
    const { volts, amps, tripped, problems } = solve(netlist);
    expect(problems).toEqual([]);
    const expected = await reference.operatingPoint(decided(netlist, tripped));
    const held = heldNodes(netlist);
    for (const [node, value] of expected) {
      if (!held.has(node)) continue;
      const off = Math.abs((volts.get(node) ?? Number.NaN) - value);
      expect(off, JSON.stringify(netlist)).toBeLessThan(Math.max(1e-3, 1e-3 * Math.abs(value)));
      compared += 1;
    }
    for (const device of netlist) {
      if (device.kind !== 'resistor') continue;
      const [a, b] = [expected.get(device.a) ?? 0, expected.get(device.b) ?? 0];
      if (!held.has(device.a) || !held.has(device.b) || device.ohms < 100) continue;
      const flows = (a - b) / device.ohms;
      expect(Math.abs((amps.get(device.id) ?? Number.NaN) - flows)).toBeLessThan(
        Math.max(1e-6, 1e-3 * Math.abs(flows)),
      );
    }
  }
  expect(compared).toBeGreaterThan(1_000);
}, 300_000);
