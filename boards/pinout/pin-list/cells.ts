/** The cells of a line: between tabs, between bars, or between two spaces and more. */
export function cellsOf(line: string): readonly string[] {
  if (line.includes('\t')) return trimmed(line.split('\t'));
  if (/^\s*\|.*\|\s*$|\S\s*\|\s*\S.*\|?/.test(line) && line.includes('|'))
    return trimmed(
      line
        .replace(/^\s*\|/, '')
        .replace(/\|\s*$/, '')
        .split('|'),
    );
  return trimmed(line.trim().split(/\s{2,}/));
}

/** Where a cell of a line begins and ends. */
export interface Extent {
  readonly from: number;
  readonly to: number;
}

/** Where the cells of a line stand; undefined where bars or tabs part them, between which blank ones are told. */
export function extentsOf(line: string): readonly Extent[] | undefined {
  if (/[\t|]/.test(line)) return undefined;
  return [...line.matchAll(/\S+(?:\s\S+)*/g)]
    .slice(0, MOST_CELLS)
    .map(({ 0: { length }, index }) => ({ from: index, to: index + length }));
}

/** Cells between semicolons or commas, as a spreadsheet writes them. */
export function listedCells(line: string): readonly string[] {
  return trimmed(line.split(line.includes(';') ? ';' : ','));
}

/** Whether a line only rules off a table: "|---|:-:|", "+----+", "=====". */
export function isRule(line: string): boolean {
  return /^[\s|:+=_-]*$/.test(line) && /[-=_]{3,}/.test(line);
}

/** More cells than this stand in no line of a list. */
const MOST_CELLS = 4_096;

function trimmed(cells: readonly string[]): readonly string[] {
  return cells.slice(0, MOST_CELLS).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1'));
}
