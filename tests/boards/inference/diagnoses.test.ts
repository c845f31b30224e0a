import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beliefFrom, observed } from '../../../boards/inference/belief';
import { bestQuestion } from '../../../boards/inference/best-question';
import { minimalDiagnoses } from '../../../boards/inference/diagnoses';
import { gainBits } from '../../../boards/inference/information';
import { chancesOf } from '../../../boards/inference/log-space';

const sorted = (sets: readonly (readonly string[])[]) => sets.map((set) => [...set].sort().join(' ')).sort();

/**
 * The polybox of de Kleer and Williams 1987, Diagnosing multiple faults, Artificial Intelligence 32 (from
 * memory): three multipliers and two adders, A=3 B=2 C=2 D=3 E=3; F was measured 10, G was measured 12.
 */
const PARTS = ['M1', 'M2', 'M3', 'A1', 'A2'] as const;
type Part = (typeof PARTS)[number];
const F = 10;
const G = 12;

/** Every way the parts can be whole or broken, and what X, Y and Z then are; null where nothing forces them. */
const CANDIDATES = Array.from({ length: 32 }, (_, bits) => {
  const whole = (part: Part) => ((bits >> PARTS.indexOf(part)) & 1) === 0;
  let values: Record<'X' | 'Y' | 'Z', number | null> = { X: null, Y: null, Z: null };
  let possible = true;
  const force = (name: 'X' | 'Y' | 'Z', value: number | null) => {
    if (value === null || values[name] === value) return;
    if (values[name] !== null) possible = false;
    values = { ...values, [name]: value };
  };
  for (let round = 0; round < 4; round++) {
    if (whole('M1')) force('X', 3 * 2);
    if (whole('M2')) force('Y', 2 * 3);
    if (whole('M3')) force('Z', 2 * 3);
    if (whole('A1')) {
      force('Y', values.X === null ? null : F - values.X);
      force('X', values.Y === null ? null : F - values.Y);
    }
    if (whole('A2')) {
      force('Z', values.Y === null ? null : G - values.Y);
      force('Y', values.Z === null ? null : G - values.Z);
    }
  }
  const broken = PARTS.filter((part) => !whole(part));
  return { broken, values, possible };
});

describe('the polybox', () => {
  const conflicts = [new Set<Part>(['A1', 'M1', 'M2']), new Set<Part>(['A1', 'A2', 'M1', 'M3'])];

  it('has the four published minimal diagnoses', () => {
    const { sets, complete } = minimalDiagnoses(conflicts);
    expect(complete).toBe(true);
    expect(sorted(sets)).toEqual(['A1', 'A2 M2', 'M1', 'M2 M3']);
  });

  it('is explained by a set of parts exactly when the set has a minimal diagnosis within it', () => {
    const { sets } = minimalDiagnoses(conflicts);
    for (const { broken, possible } of CANDIDATES)
      expect(sets.some((set) => set.every((part) => broken.includes(part)))).toBe(possible);
  });

  it('is best measured at X next, as published', () => {
    const possible = CANDIDATES.filter((candidate) => candidate.possible);
    const belief = beliefFrom(
      possible.map(({ broken }) => 0.01 ** broken.length * 0.99 ** (5 - broken.length)),
    );
    const points = (['X', 'Y', 'Z'] as const).map((point) => {
      const seen = [
        ...new Set(possible.map(({ values }) => values[point]).filter((value) => value !== null)),
      ];
      // A value that nothing forces is one of those in question, or any other.
      const rows = possible.map(({ values }) =>
        [...seen, null].map((value) =>
          values[point] === null ? 1 / (seen.length + 1) : values[point] === value ? 1 : 0,
        ),
      );
      return { point, gainBits: gainBits(chancesOf(belief), rows), effort: 1, seen, rows };
    });
    const best = bestQuestion(points);
    expect(best?.point).toBe('X');
    // X turns out as 4: M1 is to blame, by far.
    const is4 = best?.rows.map((row) => row[best.seen.indexOf(4)] ?? 0) ?? [];
    const after = chancesOf(observed(belief, is4));
    const m1 = possible.findIndex(({ broken }) => broken.join() === 'M1');
    expect(after[m1]).toBeGreaterThan(0.95);
  });
});

describe('minimal diagnoses', () => {
  const suspects = ['a', 'b', 'c', 'd', 'e', 'f'] as const;
  const conflict = fc.uniqueArray(fc.constantFrom(...suspects), { minLength: 1, maxLength: 4 });

  it('are just the sets that hit every conflict and have no smaller one within them', () => {
    fc.assert(
      fc.property(fc.array(conflict, { maxLength: 6 }), (conflicts) => {
        const all = Array.from({ length: 64 }, (_, bits) => suspects.filter((__, at) => (bits >> at) & 1));
        const hitting = all.filter((set) => conflicts.every((each) => each.some((one) => set.includes(one))));
        const minimal = hitting.filter(
          (set) =>
            !hitting.some((other) => other.length < set.length && other.every((one) => set.includes(one))),
        );
        const { sets, complete } = minimalDiagnoses(conflicts.map((each) => new Set(each)));
        expect(complete).toBe(true);
        expect(sorted(sets)).toEqual(sorted(minimal));
      }),
      { seed: 20_260_402, numRuns: 500 },
    );
  });

  it('are none when nothing can be blamed, the empty set when nothing is wrong, and said to be cut short', () => {
    expect(minimalDiagnoses([new Set()])).toEqual({ sets: [], complete: true });
    expect(minimalDiagnoses([])).toEqual({ sets: [[]], complete: true });
    const many = Array.from({ length: 12 }, (_, at) => new Set([`${at}a`, `${at}b`, `${at}c`]));
    expect(minimalDiagnoses(many, 500).complete).toBe(false);
  });
});
