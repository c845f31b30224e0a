import type { Grid } from '../grid';
import type { ProblemList } from '../problem/problem-list';
import { count } from '../problem/shown-value';
import { Once } from './once';

/** Free labels have to fill the grid they are for, each once, and there has to be one. */
export function checkGrid({ numbering, rows, cols }: Grid, path: string, list: ProblemList): void {
  if (numbering.scheme !== 'free') return;
  const { labels } = numbering;
  const at = `${path}.numbering.labels`;
  const say = (where: string, expected: string, found: string) =>
    list.add(() => ({ path: where, expected, found }));
  if (labels.length !== rows)
    say(at, `a list of ${rows}, as the grid has rows`, `a list of ${labels.length}`);
  const once = new Once('a label', list);
  labels.forEach((row, r) => {
    if (row.length !== cols)
      say(`${at}[${r}]`, `a list of ${cols}, as the grid has columns`, `a list of ${row.length}`);
    row.forEach((label, c) => {
      if (label !== null) once.enter(label, `${at}[${r}][${c}]`);
    });
  });
  if (labels.every((row) => row.every((label) => label === null)))
    say(at, 'at least one label', 'a grid without any position');
}

/** All grids of a kind together must not have more cells than can be held. */
export function checkCells(
  grids: readonly Grid[],
  limit: number,
  what: string,
  path: string,
  list: ProblemList,
): boolean {
  const cells = grids.reduce((sum, grid) => sum + grid.rows * grid.cols, 0);
  if (cells <= limit) return true;
  list.add(() => ({ path, expected: `at most ${count(limit)} ${what} in all`, found: count(cells) }));
  return false;
}
