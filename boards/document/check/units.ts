import type { Build } from '../build';
import { unitsOf } from '../lookup';
import type { ProblemList } from '../problem/problem-list';
import { checkConnectors } from './connectors';
import { Once } from './once';

/** Units have ids of their own, and connectors whose ids the board has not either: a seat names no unit. */
export function checkUnits(build: Build, list: ProblemList): void {
  const units = unitsOf(build);
  const ids = new Once('an id', list);
  units.forEach(({ id }, at) => {
    ids.enter(id, `units[${at}].id`);
  });
  checkConnectors(
    [
      { path: 'board.connectors', connectors: build.board.connectors },
      ...units.map(({ connectors }, at) => ({ path: `units[${at}].connectors`, connectors })),
    ],
    list,
  );
}
