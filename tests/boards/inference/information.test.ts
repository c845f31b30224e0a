import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beliefFrom, mayBeMisread, observed, ranked } from '../../../boards/inference/belief';
import { bestQuestion } from '../../../boards/inference/best-question';
import { entropyBits, gainBits } from '../../../boards/inference/information';
import { chancesOf, logSumExp } from '../../../boards/inference/log-space';

describe('how open a question is', () => {
  // Worked by hand: MacKay, Information Theory, Inference, and Learning Algorithms (2003), 2.4 and 4.1 (from memory).
  it('is one bit for a fair coin, none for a sure thing, log2 of the number when all are alike', () => {
    expect(entropyBits([0.5, 0.5])).toBeCloseTo(1, 12);
    expect(entropyBits([1, 0, 0])).toBe(0);
    expect(entropyBits(Array(12).fill(1 / 12))).toBeCloseTo(Math.log2(12), 12);
    expect(entropyBits([0.5, 0.25, 0.125, 0.125])).toBeCloseTo(1.75, 12);
    expect(entropyBits([2, 1, 0.5, 0.5])).toBeCloseTo(1.75, 12);
  });

  // The twelve balls: one is heavier or lighter; four against four has three like answers (MacKay, 4.1, from memory).
  it('says that weighing four balls against four tells log2 of 3 bits of the 24 cases, and six against six only 1', () => {
    const cases = Array.from({ length: 24 }, (_, at) => ({ ball: at >> 1, heavier: at % 2 === 0 }));
    const weighing = (many: number) =>
      cases.map(({ ball, heavier }) => {
        if (ball >= 2 * many) return [0, 0, 1];
        return ball < many === heavier ? [1, 0, 0] : [0, 1, 0];
      });
    const alike = cases.map(() => 1 / 24);
    expect(gainBits(alike, weighing(4))).toBeCloseTo(Math.log2(3), 12);
    expect(gainBits(alike, weighing(6))).toBeCloseTo(1, 12);
  });

  // A binary symmetric channel that errs one time in ten carries 1 − H(0.1) = 0.531 bit (MacKay, 9.6, from memory).
  it('says that a reading wrong one time in ten tells 0.531 bit of a coin', () => {
    const sure = (face: number, says: number) => mayBeMisread(face === says ? 1 : 0, 0.5, 0.2);
    const answers = [0, 1].map((face) => [0, 1].map((says) => sure(face, says)));
    expect(answers).toEqual([
      [0.9, 0.1],
      [0.1, 0.9],
    ]);
    expect(gainBits([0.5, 0.5], answers)).toBeCloseTo(0.531, 3);
  });

  it('tells no more than the question and no more than the answer is open, and never less than nothing', () => {
    const share = fc.double({ min: 0.001, max: 1, noNaN: true });
    const scaled = (row: readonly number[]) => {
      const sum = row.reduce((a, b) => a + b, 0);
      return row.map((one) => one / sum);
    };
    const rows = fc.array(fc.array(share, { minLength: 4, maxLength: 4 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(rows, fc.array(share, { minLength: 6, maxLength: 6 }), (given, weights) => {
        const answers = given.map(scaled);
        const chances = scaled(weights.slice(0, answers.length));
        const overall = [0, 1, 2, 3].map((a) =>
          answers.reduce((sum, row, h) => sum + (row[a] ?? 0) * (chances[h] ?? 0), 0),
        );
        const gain = gainBits(chances, answers);
        // Independently: the mean of what Bayes' rule leaves open after each answer.
        const left = overall.reduce((sum, chance, a) => {
          const after = scaled(chances.map((one, h) => one * (answers[h]?.[a] ?? 0)));
          return sum + chance * entropyBits(after);
        }, 0);
        expect(gain).toBeCloseTo(entropyBits(chances) - left, 9);
        expect(gain).toBeLessThanOrEqual(Math.min(entropyBits(chances), entropyBits(overall)) + 1e-12);
        expect(gain).toBeGreaterThanOrEqual(0);
      }),
      { seed: 20_260_401 },
    );
  });
});

describe('a belief', () => {
  // Eddy 1982, Probabilistic reasoning in clinical medicine, in Kahneman, Slovic and Tversky (from memory):
  // 1 % of the women have cancer; the picture is positive in 79.2 % of these and in 9.6 % of the others.
  it('is 7.7 % after a positive mammogram, where many physicians said 75 %', () => {
    const after = observed(beliefFrom([0.01, 0.99]), [0.792, 0.096]);
    expect(chancesOf(after)[0]).toBeCloseTo(0.077, 3);
    expect(ranked(after).map(({ index }) => index)).toEqual([1, 0]);
  });

  // The same as told by Gigerenzer and Hoffrage 1995 (from memory): 80 % and 9.6 % make 7.8 %.
  it('is 7.8 % with the rounded figures of the later telling', () => {
    expect(chancesOf(observed(beliefFrom([10, 990]), [0.8, 0.096]))[0]).toBeCloseTo(0.078, 3);
  });

  it('does not lose a hypothesis to a number too small for a computer', () => {
    let belief = beliefFrom([0.5, 0.5]);
    for (let i = 0; i < 2_000; i++) belief = observed(belief, [1e-3, 2e-3]);
    expect(chancesOf(belief)[1]).toBe(1);
    for (let i = 0; i < 2_000; i++) belief = observed(belief, [2e-3, 1e-3]);
    expect(chancesOf(belief)[0]).toBeCloseTo(0.5, 6);
    expect(logSumExp([-1_000, -1_000])).toBeCloseTo(Math.log(2) - 1_000, 9);
    expect(logSumExp([])).toBe(Number.NEGATIVE_INFINITY);
  });

  it('survives one wrong reading when readings may be wrong, and does not without', () => {
    const belief = beliefFrom([0.5, 0.5]);
    const right = [mayBeMisread(0.9, 0.3, 0.05), mayBeMisread(0, 0.3, 0.05)];
    const wrong = [right[1] ?? 0, right[0] ?? 0];
    const after = [right, wrong, right, right].reduce((b, each) => observed(b, each), belief);
    expect(chancesOf(after)[0]).toBeGreaterThan(0.99);
    expect(() => chancesOf(observed(observed(belief, [1, 0]), [0, 1]))).toThrow('No hypothesis of 2');
    expect(() => observed(belief, [1])).toThrow('1 likelihoods for 2 hypotheses');
  });
});

describe('the question to ask next', () => {
  it('tells most for its effort, and is never one with a risk', () => {
    const dear = { gainBits: 1, effort: 4 };
    const cheap = { gainBits: 0.6, effort: 1 };
    const harmful = { gainBits: 5, effort: 1, risk: 'harm' };
    expect(bestQuestion([dear, harmful, cheap])).toBe(cheap);
    expect(bestQuestion([harmful])).toBeUndefined();
    expect(bestQuestion([dear, cheap], 1)).toBeUndefined();
  });
});
