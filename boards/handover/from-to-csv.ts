import type { Build } from '../document/build';
import { csvText } from './csv';
import { FROM_TO_COLUMNS, fromToOf } from './from-to';

/** The from-to list of a build as comma-separated values, its headings first. */
export function fromToCsv(build: Build): string {
  const rows = fromToOf(build).map((row) => FROM_TO_COLUMNS.map(([column]) => row[column]));
  return csvText([FROM_TO_COLUMNS.map(([, heading]) => heading), ...rows]);
}
