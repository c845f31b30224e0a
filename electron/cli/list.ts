import type { Build } from '../../boards/document/build';
import { FROM_TO_COLUMNS, fromToOf } from '../../boards/handover/from-to';
import { fromToCsv } from '../../boards/handover/from-to-csv';
import { visible } from './terminal';

const HEADINGS = FROM_TO_COLUMNS.map(([, heading]) => heading);

/** The from-to list of a build: as values for a spreadsheet, or in columns for people. Ends with a line break. */
export function listText(build: Build, csv: boolean): string {
  if (csv) return fromToCsv(build);
  const rows = fromToOf(build).map((row) => FROM_TO_COLUMNS.map(([column]) => row[column]));
  if (rows.length === 0) return 'No plug is seated in this build.\n';
  const shown = [HEADINGS, ...rows].map((row) => row.map((cell) => visible(cell)));
  const widths = HEADINGS.map((_, at) => Math.max(...shown.map((row) => [...(row[at] ?? '')].length)));
  const lines = shown.map((row) =>
    row
      .map((cell, at) => cell + ' '.repeat((widths[at] ?? 0) - [...cell].length))
      .join('  ')
      .trimEnd(),
  );
  return `${lines.join('\n')}\n`;
}
