import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Device, GROUND, type Netlist } from '../../../boards/circuit/device';
import { type Solution, solve } from '../../../boards/circuit/solve';
import { arbitraryNetlist } from './arbitrary-netlist';

const RUNS = { numRuns: 1_000, seed: 20261125 };

const drop = (solution: Solution, { a, b }: Device) =>
  (solution.volts.get(a) ?? 0) - (solution.volts.get(b) ?? 0);
const amps = (solution: Solution, { id }: Device) => solution.amps.get(id) ?? 0;

test("Kirchhoff's current law holds at every node to a nanoampere", () => {
  fc.assert(
    fc.property(arbitraryNetlist, (netlist) => {
      const solution = solve(netlist);
      expect(solution.problems).toEqual([]);
      for (const node of solution.volts.keys()) {
        if (node === GROUND) continue;
        const leaving = netlist.flatMap((device) => {
          if (device.a === node) return [amps(solution, device)];
          return device.b === node ? [-amps(solution, device)] : [];
        });
        const sum = leaving.reduce((total, one) => total + one, 0);
        expect(Math.abs(sum)).toBeLessThan(1e-9 * Math.max(1, ...leaving.map(Math.abs)));
      }
    }),
    RUNS,
  );
});

test('power given by the sources equals power turned into heat (Tellegen)', () => {
  fc.assert(
    fc.property(arbitraryNetlist, (netlist) => {
      const solution = solve(netlist);
      const watts = netlist.map((device) => drop(solution, device) * amps(solution, device));
      const moved = watts.reduce((sum, one) => sum + Math.abs(one), 0);
      expect(Math.abs(watts.reduce((sum, one) => sum + one, 0))).toBeLessThan(1e-9 * Math.max(1, moved));
    }),
    RUNS,
  );
});

test('a part without a source in it never gives power', () => {
  fc.assert(
    fc.property(arbitraryNetlist, (netlist) => {
      const solution = solve(netlist);
      for (const device of netlist) {
        if (device.kind === 'voltage' || device.kind === 'current') continue;
        expect(drop(solution, device) * amps(solution, device)).toBeGreaterThan(-1e-9);
      }
    }),
    RUNS,
  );
});

test('the order of devices and the names of nodes change nothing', () => {
  fc.assert(
    fc.property(arbitraryNetlist, (netlist) => {
      const renamed = (node: string) => (node === GROUND ? node : `z${99 - Number(node.slice(1))}`);
      const turned: Netlist = netlist
        .map((one) => ({ ...one, a: renamed(one.a), b: renamed(one.b) }))
        .reverse();
      const [before, after] = [solve(netlist), solve(turned)];
      for (const [node, value] of before.volts) {
        const other = after.volts.get(renamed(node)) ?? Number.NaN;
        expect(Math.abs(other - value)).toBeLessThan(1e-6 * Math.max(1, Math.abs(value)));
      }
    }),
    RUNS,
  );
});

test('with all sources off everything is at rest', () => {
  fc.assert(
    fc.property(arbitraryNetlist, (netlist) => {
      const off = netlist.map((device): Device => {
        if (device.kind === 'voltage') return { ...device, volts: 0 };
        return device.kind === 'current' ? { ...device, amps: 0 } : device;
      });
      for (const value of solve(off).volts.values()) expect(Math.abs(value)).toBeLessThan(1e-9);
    }),
    RUNS,
  );
});
