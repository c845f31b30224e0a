import { checkCells, checkGrid } from './check-grid';
import type { Connector } from './connector';
import { LIMITS } from './limits';
import { gridIndex } from './numbering';
import { Once } from './once';
import type { ProblemList } from './problem-list';
import { shownText } from './shown-value';

/** Connectors have ids of their own, and pins that stand in their grids, each once. */
export function checkConnectors(connectors: readonly Connector[], path: string, list: ProblemList): void {
  const grids = connectors.map(({ grid }) => grid);
  if (!checkCells(grids, LIMITS.pins, 'pins', path, list)) return;
  const ids = new Once('an id', list);
  connectors.forEach((connector, at) => {
    if (list.full) return;
    const here = `${path}[${at}]`;
    ids.enter(connector.id, `${here}.id`);
    checkGrid(connector.grid, `${here}.grid`, list);
    checkPins(connector, `${here}.pins`, list);
  });
}

function checkPins({ grid, pins }: Connector, path: string, list: ProblemList): void {
  const { cellOf } = gridIndex(grid);
  const labels = new Once('a pin', list);
  pins.forEach(({ pin }, at) => {
    const here = `${path}[${at}].pin`;
    if (!labels.enter(pin, here) || cellOf(pin) !== undefined) return;
    list.add(() => ({ path: here, expected: 'a label that the grid counts', found: shownText(pin) }));
  });
}
