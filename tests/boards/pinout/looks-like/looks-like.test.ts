import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Connector } from '../../../../boards/document/connector';
import { CONNECTOR_TYPES } from '../../../../boards/library/connectors/index';
import { compared } from '../../../../boards/pinout/looks-like/compare';
import { guessedPins, guessSureness } from '../../../../boards/pinout/looks-like/guess';
import { type KnownLayout, knownLayouts } from '../../../../boards/pinout/looks-like/known-layout';
import { CLOSE, type Likeness, looksLike, NEAR } from '../../../../boards/pinout/looks-like/likeness';
import { arbitraryConnector, arbitrarySeed } from '../../arbitrary-build';
import { Dice } from '../../dice';
import { bestMatch, isLike } from './brute-force';
import { HANDLINGS, lying } from './headers';

const all = knownLayouts([]);
const aType = fc.constantFrom(...CONNECTOR_TYPES);
const aHandling = fc.constantFrom(...HANDLINGS);

/** The match of one layout, found or only near. */
function matches(here: Connector, layouts: readonly KnownLayout[]): readonly Likeness[] {
  const result = looksLike(here, layouts);
  if (result.outcome === 'nothing-known') return [];
  return result.outcome === 'found' ? result.likenesses : result.nearest;
}

function isOf({ layout, also }: Likeness, connector: KnownLayout['connector']): boolean {
  return [layout, ...also].some((each) => each.connector === connector);
}

/** A connector of which only some pins are still known. */
function forgetful(connector: Connector, keep: (at: number) => boolean): Connector {
  return { ...connector, pins: connector.pins.filter((_, at) => keep(at)) };
}

describe('a header that carries a known layout', () => {
  it.each(CONNECTOR_TYPES.map(({ id, connector }) => [id, connector] as const))(
    '%s matches itself first and wholly, however it lies',
    (_, connector) => {
      for (const handling of HANDLINGS) {
        const [first] = matches(lying(connector, handling), all);
        expect(first && isOf(first, connector)).toBe(true);
        expect(first).toMatchObject({ score: 1, sameShape: true, samePitch: true });
        expect(first?.tally).toMatchObject({ differ: 0, partly: 0 });
      }
    },
  );

  it('is still among the first when any half of its pins is forgotten', () => {
    fc.assert(
      fc.property(aType, aHandling, arbitrarySeed, ({ connector }, handling, seed) => {
        const whole = lying(connector, handling);
        const dice = new Dice(seed);
        const order = whole.pins.map((_, at) => ({ at, by: dice.below(1e6) })).sort((a, b) => a.by - b.by);
        const kept = new Set(order.slice(0, Math.ceil(order.length / 2)).map(({ at }) => at));
        const result = looksLike(
          forgetful(whole, (at) => kept.has(at)),
          all,
        );
        if (result.outcome !== 'found') return expect(result.outcome).toBe('found');
        const first = result.likenesses.slice(0, result.tied);
        expect(first[0]?.score).toBe(1);
        expect(first.some((each) => isOf(each, connector))).toBe(true);
        // Those beside it cannot be told from it by what is still known.
        for (const each of first)
          expect(each.tally).toMatchObject({ differ: 0, partly: 0, 'unknown-there': 0 });
      }),
      { seed: 20_261_126, numRuns: 400 },
    );
  });
});

describe('any two connectors', () => {
  it('match as well as the slow and obvious way says, among every turn, mirror and shift', () => {
    let close = 0;
    fc.assert(
      fc.property(arbitraryConnector('here'), arbitraryConnector('there'), fc.nat(3), (here, other, like) => {
        // Now and then a layout that has to match, with a pin here and there forgotten.
        const alike = lying(
          forgetful(here, (at) => at % 3 !== like),
          { mirror: like % 2 === 0, quarters: like },
        );
        const connector = like === 0 ? other : alike;
        const slow = here.pins.some(({ missing, signal }) => missing || (signal ?? 'unknown') !== 'unknown')
          ? bestMatch(here, connector)
          : undefined;
        const [first] = matches(here, [{ from: 'mine', connector }]);
        expect(first !== undefined).toBe(slow !== undefined && slow.score >= NEAR);
        if (first === undefined || slow === undefined) return;
        expect(first.score).toBeCloseTo(slow.score, 9);
        expect(first.agreed).toBeCloseTo(slow.agreed, 9);
        if (first.score >= CLOSE) close += 1;
      }),
      { seed: 20_261_127, numRuns: 1_500 },
    );
    expect(close).toBeGreaterThan(300);
  });

  it('are ranked as the slow way ranks them', () => {
    fc.assert(
      fc.property(aType, aHandling, arbitrarySeed, ({ connector }, handling, seed) => {
        const dice = new Dice(seed);
        const here = forgetful(lying(connector, handling), () => dice.oneIn(2));
        const result = looksLike(here, all);
        if (result.outcome !== 'found') return;
        const slow = CONNECTOR_TYPES.flatMap((type) => bestMatch(here, type.connector)?.score ?? []);
        const best = Math.max(...slow);
        expect(result.likenesses[0]?.score).toBeCloseTo(best, 9);
        const scores = result.likenesses.map(({ score }) => score);
        for (const [at, score] of scores.entries())
          expect(score).toBeLessThanOrEqual((scores[at - 1] ?? 1) + 1e-9);
        const found = new Set(result.likenesses.flatMap(({ layout, also }) => [layout, ...also]));
        expect(found.size).toBe(CONNECTOR_TYPES.filter((type) => isLike(here, type.connector)).length);
      }),
      { seed: 20_261_128, numRuns: 150 },
    );
  });
});

describe('filling in', () => {
  it('gives back what was forgotten, and never touches what is known', () => {
    fc.assert(
      fc.property(aType, aHandling, arbitrarySeed, ({ connector }, handling, seed) => {
        const dice = new Dice(seed);
        const whole = lying(connector, handling);
        const here = forgetful(whole, (at) => at === 0 || dice.oneIn(2));
        const likeness = matches(here, [{ from: 'library', connector }])[0];
        if (likeness === undefined) return expect(likeness).toBeDefined();
        const places = compared(here, connector, likeness);
        const guesses = guessedPins(places, likeness.layout, guessSureness(likeness, 1));
        const known = new Set(here.pins.map(({ pin }) => pin));
        for (const guess of guesses) {
          expect(known.has(guess.pin)).toBe(false);
          expect(guess.source?.kind).toBe('guessed');
          expect(guess.source?.where).toContain(`looks like ${connector.title}`);
          expect(guess.confidence).toBeLessThanOrEqual(0.5);
        }
        expect(guesses.length + known.size).toBe(whole.pins.length);
        const filled = { ...here, pins: [...here.pins, ...guesses] };
        const again = matches(filled, [{ from: 'library', connector }])[0];
        expect(again?.score).toBe(1);
        expect(again?.tally['unknown-here']).toBe(0);
      }),
      { seed: 20_261_129, numRuns: 300 },
    );
  });
});
