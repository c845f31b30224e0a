import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { likelihoods } from '../../../../boards/pinout/meter/evidence';
import { headerOf } from '../../../../boards/pinout/meter/header';
import { afterReadings, chancesIn } from '../../../../boards/pinout/meter/held';
import { kindIndex, pinKinds } from '../../../../boards/pinout/meter/pin-kinds';
import { readingFor } from '../../arbitrary-reading';
import { Dice } from '../../dice';
import { grid, posts } from '../../fixtures/bench';

describe('beliefs about a small header', () => {
  const row = posts('row', grid(1, 3));
  const header = headerOf(row);
  const labels = ['1', '2', '3'];

  // Exact enumeration, done with plain products and nothing of the log-space code.
  it('are those of plain products over every layout and every three kinds of stray pins', () => {
    fc.assert(
      fc.property(fc.nat(), fc.integer({ min: 1, max: 5 }), (seed, many) => {
        const dice = new Dice(seed);
        const asked = new Set<string>();
        let pair = false;
        const readings = Array.from({ length: many }, () => readingFor(labels, dice))
          .filter((reading) => reading !== undefined)
          .filter((reading) => {
            // One reading of a kind on a pin, and one between pins: repeats and several pairs are weighed otherwise.
            const at =
              'pin' in reading
                ? `${reading.kind} ${reading.pin} ${'supply' in reading ? reading.supply : ''}`
                : 'pair';
            if (asked.has(at) || (at === 'pair' && pair)) return false;
            asked.add(at);
            pair ||= at === 'pair';
            return true;
          });
        const size = pinKinds().length;
        const known = new Map(readings.map((reading) => [reading, likelihoods(reading)]));
        const worth = (kinds: readonly number[]) =>
          readings.reduce((product, reading) => {
            const [a = 0, b] = (
              'pin' in reading
                ? [reading.pin]
                : 'pins' in reading
                  ? reading.pins
                  : [reading.plus, reading.minus]
            ).map((label) => kinds[labels.indexOf(label)] ?? 0);
            return product * (known.get(reading)?.[b === undefined ? a : a * size + b] ?? 0);
          }, 1);
        const plain = header.layouts.map(
          ({ signals }, at) => Math.exp(header.logWeights[at] ?? 0) * worth(signals.map(kindIndex)),
        );
        let stray = 0;
        const share = (kind: number) => header.strayKinds[kind] ?? 0;
        for (let a = 0; a < size; a++)
          for (let b = 0; b < size; b++)
            for (let c = 0; c < size; c++) stray += share(a) * share(b) * share(c) * worth([a, b, c]);
        const none = Math.exp(header.logNone) * stray;
        const all = plain.reduce((x, y) => x + y, none);
        const ours = chancesIn(afterReadings(header, readings));
        expect(ours.none).toBeCloseTo(none / all, 9);
        plain.forEach((weight, at) => {
          expect(ours.layouts[at]).toBeCloseTo(weight / all, 9);
        });
      }),
      { seed: 20_260_503, numRuns: 12 },
    );
  });

  it('count a repeat for half, and one at a pin that does not stand for nothing', () => {
    const reading = { kind: 'ohms', pin: '1', ohms: 0.3 } as const;
    const ground = header.layouts.map(({ signals }) => signals[0] === 'ground');
    const chance = (...readings: readonly (typeof reading)[]) =>
      chancesIn(afterReadings(header, readings)).layouts.reduce(
        (sum, one, at) => sum + (ground[at] ? one : 0),
        0,
      );
    const [once, twice] = [chance(reading), chance(reading, reading)];
    expect(once).toBeGreaterThan(chance());
    expect(twice).toBeGreaterThan(once);
    expect(1 - twice).toBeGreaterThan((1 - once) ** 2);
    const nowhere = afterReadings(header, [{ kind: 'ohms', pin: '9', ohms: 1 }]);
    expect(chancesIn(nowhere).layouts).toEqual(chancesIn(afterReadings(header, [])).layouts);
  });
});
