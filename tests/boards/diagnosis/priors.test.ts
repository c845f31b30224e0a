import { describe, expect, it } from 'vitest';
import { dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { faultsAsWritten } from '../../../boards/diagnosis/faults/as-written';
import { BOARD_FAULTS } from '../../../boards/diagnosis/faults/board-faults';
import { faultsOf } from '../../../boards/diagnosis/faults/faults';
import { PRIOR_SOURCE, sharesOf, weighedBy } from '../../../boards/diagnosis/faults/priors';
import { withPairs } from '../../../boards/diagnosis/pairs';
import { suspicionOf } from '../../../boards/diagnosis/posterior';
import type { Build } from '../../../boards/document/build';
import { demo } from '../findings/demo';

describe('how often causes are met before anything was noticed', () => {
  it('is stated as shares that add up to 1, and said to have no source', () => {
    const shares = sharesOf(BOARD_FAULTS);
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(shares.map(({ share }) => share)).toEqual(shares.map(({ share }) => share).sort((a, b) => b - a));
    expect(PRIOR_SOURCE).toBe('common practice, no source');
  });

  it('are what is believed with nothing noticed, beside 3 in 100 for none of these', () => {
    const { suspects } = suspicionOf(dictionaryOf(BOARD_FAULTS), { seen: [], notSeen: [] });
    for (const { cause, share } of sharesOf(BOARD_FAULTS))
      expect(suspects.find((suspect) => suspect.cause === cause)?.chance).toBeCloseTo(0.97 * share, 12);
  });

  it('can be weighed in one\u2019s own way: three times as often trebles the odds against each other cause', () => {
    const before = sharesOf(BOARD_FAULTS);
    const after = sharesOf(weighedBy(BOARD_FAULTS, [{ cause: 'coin-cell', factor: 3 }]));
    const odds = (shares: typeof before) =>
      (shares.find(({ cause }) => cause === 'coin-cell')?.share ?? 0) /
      (shares.find(({ cause }) => cause === 'memory')?.share ?? 1);
    expect(odds(after)).toBeCloseTo(3 * odds(before), 12);
  });

  it('take the last of two factors, and are not harmed by causes that nobody knows', () => {
    const twice = weighedBy(BOARD_FAULTS, [
      { cause: 'memory', factor: 9 },
      { cause: 'memory', factor: 2 },
      { cause: 'elephants', factor: 5 },
    ]);
    expect(twice).toEqual(weighedBy(BOARD_FAULTS, [{ cause: 'memory', factor: 2 }]));
    expect(weighedBy(BOARD_FAULTS, [])).toBe(BOARD_FAULTS);
  });

  it('are kept in the build, and weigh its faults without solving anything anew', () => {
    const build = demo('wired');
    const own = faultsOf({ ...build, priors: [{ cause: 'switch-stuck', factor: 10 }] });
    const plain = faultsOf(build);
    own.forEach((fault, at) => {
      expect(fault.ways).toBe(plain[at]?.ways);
      expect(fault.weight).toBe((plain[at]?.weight ?? 0) * (fault.cause === 'switch-stuck' ? 10 : 1));
    });
  });

  it('count for the wrong wiring that is written down too, and nothing of what it would show is predicted again', () => {
    const build = demo('wired');
    const oneOff: Build = {
      ...build,
      seats: build.seats.map((seat) =>
        seat.lead === 'power-switch' ? { ...seat, at: [seat.at[0], seat.at[1] + 1] } : seat,
      ),
    };
    const plain = withPairs(dictionaryOf(faultsAsWritten(oneOff)), { singles: 20 });
    const own = withPairs(
      dictionaryOf(faultsAsWritten({ ...oneOff, priors: [{ cause: 'panel-lead-miswire', factor: 3 }] })),
      { singles: 20 },
    );
    own.faults.forEach((fault, at) => {
      expect(own.outcomes[at]).toBe(plain.outcomes[at]);
      expect(fault.weight).toBe(
        (plain.faults[at]?.weight ?? 0) * (fault.cause === 'panel-lead-miswire' ? 3 : 1),
      );
    });
    const shown = new Set(plain.hypotheses.map(({ outcomes }) => outcomes));
    const anew = own.hypotheses.filter(({ outcomes }) => !shown.has(outcomes));
    // Only pairs that were too rare to be taken up before, or that are named the other way round now.
    expect(anew.every(({ faults }) => faults.some(({ cause }) => cause === 'panel-lead-miswire'))).toBe(true);
    expect(own.hypotheses.some(({ faults, outcomes }) => faults.length === 2 && shown.has(outcomes))).toBe(
      true,
    );
  });
});
