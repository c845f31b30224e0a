import highsLoader from 'highs';
import type { AllotItem } from '../../boards/routing/assign/allot';

interface AllotOptimum {
  readonly leftOut: number;
  readonly cost: number;
}

/**
 * The same question as an integer program for HiGHS (npm "highs"): a 0-1 variable for each item at each
 * place and for each item left out; first the least weight left out, then, with that held, the least cost.
 */
export async function allotProgram(): Promise<
  (items: readonly AllotItem[], places: readonly (readonly number[])[]) => AllotOptimum
> {
  const highs = await highsLoader();
  return (items, places) => {
    const out = items.map(({ weight }, item) => `${weight} o${item}`).join(' + ');
    const priced = items.flatMap(({ costs }, item) =>
      costs.flatMap((cost, place) => (cost === undefined ? [] : [`${cost} ${nameOf(item, place)}`])),
    );
    const least = (objective: string, held: readonly string[]): number => {
      const model = modelOf(items, places, objective, held);
      const solved = highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0 });
      if (solved.Status !== 'Optimal') throw new Error(`HiGHS says ${solved.Status}`);
      return Math.round(solved.ObjectiveValue);
    };
    const leftOut = least(out, []);
    const cost = priced.length === 0 ? 0 : least(priced.join(' + '), [`${out} <= ${leftOut}`]);
    return { leftOut, cost };
  };
}

function modelOf(
  items: readonly AllotItem[],
  places: readonly (readonly number[])[],
  objective: string,
  held: readonly string[],
): string {
  const pairs = items.flatMap(({ costs }, item) =>
    costs.flatMap((cost, place) => (cost === undefined ? [] : [{ item, place }])),
  );
  const once = items.map((_, item) =>
    [`o${item}`, ...pairs.filter((pair) => pair.item === item).map((pair) => nameOf(item, pair.place))]
      .join(' + ')
      .concat(' = 1'),
  );
  const rooms = places.flatMap((room, place) =>
    room.flatMap((most, of) => {
      const here = pairs.filter((pair) => pair.place === place);
      const terms = here.map(({ item }) => `${items[item]?.takes[of] ?? 0} ${nameOf(item, place)}`);
      return terms.length === 0 ? [] : [`${terms.join(' + ')} <= ${most}`];
    }),
  );
  return [
    'Minimize',
    ` cost: ${objective}`,
    'Subject To',
    ...[...once, ...rooms, ...held].map((row, at) => ` r${at}: ${row}`),
    'Binary',
    ` ${[...items.map((_, item) => `o${item}`), ...pairs.map(({ item, place }) => nameOf(item, place))].join(' ')}`,
    'End',
  ].join('\n');
}

function nameOf(item: number, place: number): string {
  return `x${item}_${place}`;
}
