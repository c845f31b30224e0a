import highsLoader from 'highs';
import { COST_LEVELS, type Cost } from '../../boards/planner/cost';
import type { Instance } from '../../boards/planner/instance';

/**
 * The same seating problem as an integer program for HiGHS (npm "highs", the solver of the University
 * of Edinburgh, built for WebAssembly): a 0-1 variable for each choice, one choice in each slot, at most
 * one of two that clash; one level of the cost after the other, each held at its optimum for the next.
 */
export async function integerProgram(): Promise<(instance: Instance) => Cost | 'impossible'> {
  const highs = await highsLoader();
  return (instance) => {
    const held: string[] = [];
    const optimum: Partial<Record<string, number>> = {};
    for (const level of COST_LEVELS) {
      const terms = instance.slots.flatMap(({ choices }, slot) =>
        choices.flatMap(({ cost }, choice) =>
          cost[level] > 0 ? [`${cost[level]} ${nameOf(slot, choice)}`] : [],
        ),
      );
      if (terms.length === 0) {
        if (level !== 'moved' || held.length > 0) {
          optimum[level] = 0;
          continue;
        }
      }
      const objective = terms.length > 0 ? terms.join(' + ') : `0 ${nameOf(0, 0)}`;
      const solved = highs.solve(modelOf(instance, objective, held), { mip_rel_gap: 0, mip_abs_gap: 0 });
      if (solved.Status === 'Infeasible') return 'impossible';
      if (solved.Status !== 'Optimal') throw new Error(`HiGHS says ${solved.Status}`);
      const best = Math.round(solved.ObjectiveValue);
      optimum[level] = best;
      held.push(`${objective} <= ${best}`);
    }
    return optimum as Cost;
  };
}

function modelOf({ slots, clashes }: Instance, objective: string, held: readonly string[]): string {
  const rows = [
    ...slots.map(
      ({ choices }, slot) => `${choices.map((_, choice) => nameOf(slot, choice)).join(' + ')} = 1`,
    ),
    ...clashes.map(([one, other]) => `${nameOf(...one)} + ${nameOf(...other)} <= 1`),
    ...held,
  ];
  const names = slots.flatMap(({ choices }, slot) => choices.map((_, choice) => nameOf(slot, choice)));
  return [
    'Minimize',
    ` cost: ${objective}`,
    'Subject To',
    ...rows.map((row, index) => ` r${index}: ${row}`),
    'Binary',
    ` ${names.join(' ')}`,
    'End',
  ].join('\n');
}

function nameOf(slot: number, choice: number): string {
  return `x${slot}_${choice}`;
}
