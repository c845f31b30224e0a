import type { Build } from '../../boards/document/build';
import { CABLE_COLUMNS, cableCsv, cableRows } from '../../boards/handover/cables/cable-list';
import { FROM_TO_COLUMNS, fromToOf } from '../../boards/handover/from-to';
import { fromToCsv } from '../../boards/handover/from-to-csv';
import type { ListKind } from '../../boards/handover/order';
import { visible } from './terminal';

/** A list of a build: as values for a spreadsheet, or in columns for people. Ends with a line break. */
export function listText(build: Build, kind: ListKind, csv: boolean): string {
  if (kind === 'cables') {
    if (csv) return cableCsv(build);
    const rows = cableRows(build).map((row) => CABLE_COLUMNS.map(([column]) => row[column]));
    const headings = CABLE_COLUMNS.map(([, heading]) => heading);
    return rows.length === 0 ? 'No cable of this build is measured on a tray.\n' : inColumns(headings, rows);
  }
  if (csv) return fromToCsv(build);
  const rows = fromToOf(build).map((row) => FROM_TO_COLUMNS.map(([column]) => row[column]));
  const headings = FROM_TO_COLUMNS.map(([, heading]) => heading);
  return rows.length === 0 ? 'No plug is seated in this build.\n' : inColumns(headings, rows);
}

function inColumns(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const shown = [headings, ...rows].map((row) => row.map((cell) => visible(cell)));
  const widths = headings.map((_, at) => Math.max(...shown.map((row) => [...(row[at] ?? '')].length)));
  const lines = shown.map((row) =>
    row
      .map((cell, at) => cell + ' '.repeat((widths[at] ?? 0) - [...cell].length))
      .join('  ')
      .trimEnd(),
  );
  return `${lines.join('\n')}\n`;
}
