import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { solve } from '../../../boards/circuit/solve';
import { type Reference, startReference } from '../../reference/circuit-simulator';
import { arbitraryNetlist } from './arbitrary-netlist';

let reference: Reference;

beforeAll(async () => {
  reference = await startReference();
}, 60_000);

test('320 random circuits: every voltage within 1 mV or 0.1 % of a general circuit simulator', async () => {
  let compared = 0;
  for (const netlist of fc.sample(arbitraryNetlist, { numRuns: 320, seed: 7 })) {
    const expected = await reference.operatingPoint(netlist);
    const { volts, problems } = solve(netlist);
    expect(problems).toEqual([]);
    for (const [node, value] of expected) {
      expect(Math.abs((volts.get(node) ?? Number.NaN) - value)).toBeLessThan(
        Math.max(1e-3, 1e-3 * Math.abs(value)),
      );
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(1_000);
}, 120_000);
