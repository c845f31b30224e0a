import fc from 'fast-check';
import { type Device, GROUND, type Netlist } from '../../../boards/circuit/device';

const node = (count: number) => fc.integer({ min: 0, max: count }).map((i) => (i === 0 ? GROUND : `n${i}`));
const decade = (low: number, high: number) =>
  fc.double({ min: low, max: high, noNaN: true }).map((power) => Number((10 ** power).toPrecision(4)));
const volts = fc.integer({ min: -120, max: 120 }).map((tenths) => tenths / 10);

const part: fc.Arbitrary<Record<string, unknown>> = fc.oneof(
  { weight: 5, arbitrary: fc.record({ kind: fc.constant('resistor'), ohms: decade(0, 5) }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant('voltage'), volts, ohms: decade(-1, 3) }) },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant('current'),
      amps: fc.integer({ min: -20, max: 20 }).map((n) => n / 1e3),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ kind: fc.constant('open-drain'), on: fc.boolean(), onOhms: decade(0, 2) }),
  },
  {
    weight: 4,
    arbitrary: fc.record({
      kind: fc.constant('diode'),
      model: fc.record(
        {
          saturationAmps: decade(-18, -9),
          ideality: fc.integer({ min: 10, max: 20 }).map((n) => n / 10),
          seriesOhms: fc.constantFrom(0, 0.5, 5),
          reverseLimitVolts: fc.constantFrom(5, 12),
        },
        { requiredKeys: ['saturationAmps', 'ideality', 'seriesOhms'] },
      ),
    }),
  },
);

/** A random circuit of these devices in which every node has some way to ground. */
export const arbitraryNetlist: fc.Arbitrary<Netlist> = fc.integer({ min: 2, max: 8 }).chain((count) =>
  fc
    .array(fc.tuple(part, node(count), node(count)), { minLength: 3, maxLength: 14 })
    .map((parts): Netlist => {
      const devices = parts
        .filter(([, a, b]) => a !== b)
        .map(([one, a, b], i) => ({ ...one, id: `d${i}`, a, b }) as Device);
      const ways = Array.from(
        { length: count },
        (_, i): Device => ({
          id: `way${i}`,
          kind: 'resistor',
          a: `n${i + 1}`,
          b: GROUND,
          ohms: 100_000,
        }),
      );
      return [...devices, ...ways];
    }),
);
