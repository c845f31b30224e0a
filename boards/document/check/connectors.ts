import type { Connector } from '../connector';
import { LIMITS } from '../limits';
import { gridIndex } from '../numbering';
import { pinsOfReading } from '../pin-reading';
import type { ProblemList } from '../problem/problem-list';
import { shownText } from '../problem/shown-value';
import { checkCells, checkGrid } from './grid';
import { Once } from './once';

/** A list of connectors, and where it stands in the file. */
export interface ConnectorShelf {
  readonly path: string;
  readonly connectors: readonly Connector[];
}

/** Connectors have ids of their own over all shelves together, and pins that stand in their grids, each once. */
export function checkConnectors(shelves: readonly ConnectorShelf[], list: ProblemList): void {
  const grids = shelves.flatMap(({ connectors }) => connectors.map(({ grid }) => grid));
  const path = shelves.map((shelf) => shelf.path).join(' and ');
  if (!checkCells(grids, LIMITS.pins, 'pins', path, list)) return;
  const ids = new Once('an id', list);
  for (const shelf of shelves) {
    shelf.connectors.forEach((connector, at) => {
      if (list.full) return;
      const here = `${shelf.path}[${at}]`;
      ids.enter(connector.id, `${here}.id`);
      checkGrid(connector.grid, `${here}.grid`, list);
      checkPins(connector, `${here}.pins`, list);
      checkReadings(connector, `${here}.readings`, list);
    });
  }
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

/** Readings name pins that the grid counts; one between two pins names two. */
function checkReadings({ grid, readings = [] }: Connector, path: string, list: ProblemList): void {
  const { cellOf } = gridIndex(grid);
  readings.forEach((reading, at) => {
    if (list.full) return;
    const pins = pinsOfReading(reading);
    for (const pin of pins) {
      if (cellOf(pin) !== undefined) continue;
      list.add(() => ({
        path: `${path}[${at}]`,
        expected: 'pins that the grid counts',
        found: shownText(pin),
      }));
    }
    if (pins.length === 2 && pins[0] === pins[1])
      list.add(() => ({
        path: `${path}[${at}]`,
        expected: 'two different pins',
        found: `${shownText(pins[0] ?? '')} twice`,
      }));
  });
}
