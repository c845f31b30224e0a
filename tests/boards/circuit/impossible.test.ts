import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Device, GROUND, type Netlist } from '../../../boards/circuit/device';
import { circuitProblemWords } from '../../../boards/circuit/problem-words';
import { solve } from '../../../boards/circuit/solve';

const NBSP = '\u00a0';

/** Circuits that cannot be, or not quite: they are solved as far as they can be, and named in plain words. */
function told(netlist: Netlist): readonly string[] {
  return solve(netlist).problems.map((problem) => circuitProblemWords(problem, (id) => id.toUpperCase()));
}

const rail = (id: string, a: string, volts: number): Device => ({
  id,
  kind: 'voltage',
  a,
  b: GROUND,
  volts,
  ohms: 0,
});
const contact = (id: string, a: string, b: string): Device => ({ id, kind: 'switch', a, b, closed: true });
const load: Device = { id: 'load', kind: 'resistor', a: 'n', b: GROUND, ohms: 100 };

describe('two rails tied together', () => {
  test('+5 V and +12 V on one pin: the clash is named, the rest is solved', () => {
    const netlist = [rail('five', 'n', 5), rail('twelve', 'n', 12), load];
    expect(told(netlist)).toEqual([
      'TWELVE and FIVE are tied together and disagree about the voltage: nothing but the metal between them would limit the current.',
    ]);
    expect(solve(netlist).amps.get('load')).toBeCloseTo(0.05, 9);
  });

  test('through a closed contact, which belongs to the clash', () => {
    expect(told([rail('five', 'n', 5), rail('twelve', 'm', 12), contact('cap', 'n', 'm'), load])).toEqual([
      'CAP, TWELVE and FIVE are tied together and disagree about the voltage: nothing but the metal between them would limit the current.',
    ]);
  });

  test('with a resistance between them there is nothing to name: (12 − 5) V over 0.35 Ω are 20 A', () => {
    const between: Device = { id: 'between', kind: 'resistor', a: 'm', b: 'n', ohms: 0.35 };
    const { amps, problems } = solve([rail('five', 'n', 5), rail('twelve', 'm', 12), between]);
    expect(problems).toEqual([]);
    expect(amps.get('between')).toBeCloseTo(20, 9);
    expect(amps.get('five')).toBeCloseTo(20, 9);
  });

  test('a source with both ends at one point is a short of its own', () => {
    expect(told([{ id: 'cell', kind: 'voltage', a: 'n', b: 'n', volts: 3, ohms: 0 }, load])).toEqual([
      'CELL has both ends at one point: nothing but the metal between them would limit the current.',
    ]);
  });
});

describe('a loop without resistance', () => {
  test('two caps on the same two pins: voltages are certain, the share of each is not', () => {
    const netlist = [rail('five', 'm', 5), contact('one', 'm', 'n'), contact('two', 'm', 'n'), load];
    expect(told(netlist)).toEqual([
      'The way through TWO and ONE is a closed loop without resistance: voltages are certain, what flows round it is not.',
    ]);
    const { volts, amps } = solve(netlist);
    expect(volts.get('n')).toBe(5);
    expect((amps.get('one') ?? 0) + (amps.get('two') ?? 0)).toBeCloseTo(0.05, 9);
  });

  test('two rails of the same voltage: no clash', () => {
    expect(solve([rail('one', 'n', 5), rail('two', 'n', 5), load]).problems).toMatchObject([
      { code: 'current-undetermined', device: 'two', with: ['one'] },
    ]);
  });
});

describe('a current with no way back', () => {
  test('is named, and nothing flows', () => {
    const netlist: Netlist = [{ id: 'source', kind: 'current', a: GROUND, b: 'n', amps: 0.01 }];
    expect(told(netlist)).toEqual(['The current of SOURCE has no way back, so that none would flow.']);
    expect(solve(netlist).amps.get('source')).toBe(0);
  });

  test('into a piece that hangs in the air does not come back either', () => {
    const netlist: Netlist = [
      { id: 'source', kind: 'current', a: GROUND, b: 'n', amps: 0.01 },
      { id: 'r', kind: 'resistor', a: 'n', b: 'm', ohms: 100 },
    ];
    expect(solve(netlist).problems).toEqual([{ code: 'no-way-back', device: 'source' }]);
  });

  test('between two pieces of one circuit it has one', () => {
    const netlist: Netlist = [{ id: 'source', kind: 'current', a: GROUND, b: 'n', amps: 0.01 }, load];
    expect(solve(netlist).volts.get('n')).toBeCloseTo(1, 9);
  });
});

describe('no settled state', () => {
  test('a voltage that is no number is given up, not thrown', () => {
    const netlist: Netlist = [
      { id: 'feed', kind: 'voltage', a: 'feed', b: GROUND, volts: Number.NaN, ohms: 10 },
      {
        id: 'd',
        kind: 'diode',
        a: 'feed',
        b: GROUND,
        model: { saturationAmps: 1e-18, ideality: 2, seriesOhms: 0 },
      },
    ];
    const [said] = told(netlist);
    expect(said).toMatch(/^No settled state was found for FEED in \d+\u00a0steps: /);
  });

  test('a long list of points is cut short', () => {
    const nodes = ['a', 'b', 'c', 'd', 'e', 'f'];
    expect(circuitProblemWords({ code: 'gave-up', nodes, steps: 120 }, (id) => id)).toBe(
      `No settled state was found for a, b, c, d and 2${NBSP}more in 120${NBSP}steps: the values told are only the last ones tried.`,
    );
  });
});

/** Ideal sources, contacts and currents anywhere, with nothing to keep them from clashing. */
const node = fc.constantFrom(GROUND, 'n1', 'n2', 'n3', 'n4');
const anything: fc.Arbitrary<Netlist> = fc
  .array(
    fc.record({
      kind: fc.constantFrom('voltage', 'switch', 'current', 'resistor', 'diode'),
      a: node,
      b: node,
      volts: fc.constantFrom(0, 3.3, 5, -12),
    }),
    { maxLength: 14 },
  )
  .map((parts) =>
    parts.map(({ kind, a, b, volts }, i): Device => {
      const base = { id: `d${i}`, a, b };
      switch (kind) {
        case 'voltage':
          return { ...base, kind, volts, ohms: 0 };
        case 'current':
          return { ...base, kind, amps: volts / 1e3 };
        case 'switch':
          return { ...base, kind, closed: volts !== 0 };
        case 'diode':
          return { ...base, kind, model: { saturationAmps: 1e-12, ideality: 1.1, seriesOhms: 0.5 } };
        default:
          return { ...base, kind: 'resistor', ohms: 330 };
      }
    }),
  );

test('no netlist of these devices makes it throw, and whatever it names has words', () => {
  let named = 0;
  fc.assert(
    fc.property(anything, (netlist) => {
      const { volts, amps } = solve(netlist);
      const said = told(netlist);
      named += said.length;
      for (const one of said) expect(one).toMatch(/^[A-Z].+\.$/);
      const impossible = solve(netlist).problems.some(({ code }) => code === 'gave-up');
      if (!impossible) for (const value of [...volts.values(), ...amps.values()]) expect(value).not.toBeNaN();
      expect(amps.size).toBe(netlist.length);
    }),
    { seed: 20261125, numRuns: 2_000 },
  );
  expect(named).toBeGreaterThan(500);
});
