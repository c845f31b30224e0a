/**
 * Rows as comma-separated values by RFC 4180: CRLF after every row, fields with commas, quotes or line breaks
 * in quotes. A field that a spreadsheet would take for a formula gets an apostrophe in front, as text has it
 * there: a name from a stranger's file must not be carried out.
 */
export function csvText(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(field).join(',')}\r\n`).join('');
}

/** What makes a spreadsheet read a cell as a formula, also behind spaces. */
const FORMULA = /^[\s\p{Cf}]*[=+\-@\u2212\uff1d\uff0b\uff0d\uff20|\t\r]/u;

function field(value: string): string {
  const safe = FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
