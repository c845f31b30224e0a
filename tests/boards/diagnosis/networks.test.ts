import { infer } from 'bayesjs';
import { describe, expect, it } from 'vitest';
import { dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { BOARD_FAULTS } from '../../../boards/diagnosis/faults/board-faults';
import type { ObservationId } from '../../../boards/diagnosis/observations/observations';
import { suspicionOf } from '../../../boards/diagnosis/posterior';
import { placeOf } from '../../../boards/diagnosis/predict';

const ASKED: readonly ObservationId[] = ['nothing-on-press', 'clock-wrong', 'no-picture', 'smell'];
const DICTIONARY = dictionaryOf(BOARD_FAULTS);

/** One hidden node with a state for each way of each fault and one for none of these; a node for each observation. */
function network() {
  const weight = BOARD_FAULTS.reduce((sum, each) => sum + each.weight, 0);
  const states = DICTIONARY.outcomes.flatMap((outcomes, at) =>
    outcomes.map(({ chance, yes }, way) => ({
      id: `${BOARD_FAULTS[at]?.id}/${way}`,
      prior: (0.97 * (BOARD_FAULTS[at]?.weight ?? 0) * chance) / weight,
      yes: ASKED.map((id) => 0.95 * (yes[placeOf(id)] ?? 0) + 0.05 * 0.2),
    })),
  );
  states.push({ id: 'none', prior: 0.03, yes: ASKED.map(() => 0.1) });
  const hidden = {
    id: 'trouble',
    states: states.map(({ id }) => id),
    parents: [],
    cpt: Object.fromEntries(states.map(({ id, prior }) => [id, prior])),
  };
  const shown = ASKED.map((id, at) => ({
    id,
    states: ['yes', 'no'],
    parents: ['trouble'],
    cpt: states.map((state) => ({
      when: { trouble: state.id },
      // biome-ignore lint/suspicious/noThenProperty: the library's own word
      then: { yes: state.yes[at] ?? 0, no: 1 - (state.yes[at] ?? 0) },
    })),
  }));
  return { states, net: Object.fromEntries([hidden, ...shown].map((node) => [node.id, node])) };
}

describe('suspects beside a library for Bayesian networks (bayesjs)', () => {
  it.each([
    [['nothing-on-press', 'clock-wrong'], []],
    [['no-picture'], ['clock-wrong']],
    [['smell', 'no-picture'], ['nothing-on-press']],
    [[], ['nothing-on-press', 'no-picture']],
  ] satisfies [ObservationId[], ObservationId[]][])('after %j and not %j', (seen, notSeen) => {
    const { states, net } = network();
    const given = Object.fromEntries([
      ...seen.map((id) => [id, 'yes'] as const),
      ...notSeen.map((id) => [id, 'no'] as const),
    ]);
    const { suspects, noneOfThese } = suspicionOf(DICTIONARY, { seen, notSeen });
    expect(noneOfThese).toBeCloseTo(infer(net, { trouble: 'none' }, given), 9);
    for (const { fault, chance } of suspects.flatMap(({ faults }) => faults)) {
      const own = states.filter(({ id }) => id.startsWith(`${fault.id}/`));
      const reference = own.reduce((sum, { id }) => sum + infer(net, { trouble: id }, given), 0);
      expect(chance).toBeCloseTo(reference, 9);
    }
  });
});
