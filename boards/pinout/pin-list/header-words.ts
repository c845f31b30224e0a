/** What stands at the head of a column, and what is in it. */
type Column = 'label' | 'word' | 'more' | 'other';

const HEADS: Readonly<Record<Column, readonly string[]>> = {
  label: [
    'PIN',
    'PINS',
    'PIN NO',
    'PIN NUMBER',
    'PIN NR',
    'PIN NUM',
    'NO',
    'NR',
    'NUMBER',
    'POSITION',
    'POS',
    'CONTACT',
    'TERMINAL',
    'PIN ID',
    'LABEL',
    'PIN NUMBERS',
    'ROW',
  ],
  word: [
    'SIGNAL',
    'SIGNALS',
    'SIGNAL NAME',
    'NAME',
    'PIN NAME',
    'PIN DEFINITION',
    'DEFINITION',
    'ASSIGNMENT',
    'PIN ASSIGNMENT',
    'FUNCTION',
    'PIN FUNCTION',
    'SYMBOL',
    'NET',
    'NET NAME',
    'PINOUT',
    'DESIGNATION',
    'PIN DEF',
    'DEF',
    'SIGNAL DESCRIPTION',
    'ASSIGNMENTS',
    'PIN SIGNAL',
    'CONNECTION',
    'LINE',
    'MEANING',
    'USE',
  ],
  more: [
    'DESCRIPTION',
    'DESCRIPTIONS',
    'DESC',
    'PIN DESCRIPTION',
    'REMARK',
    'REMARKS',
    'COMMENT',
    'COMMENTS',
    'NOTE',
    'NOTES',
    'DETAILS',
    'EXPLANATION',
  ],
  other: [
    'TYPE',
    'I O',
    'IO',
    'DIR',
    'DIRECTION',
    'COLOUR',
    'COLOR',
    'WIRE',
    'WIRE COLOUR',
    'WIRE COLOR',
    'LEVEL',
    'VOLTAGE LEVEL',
    'IN OUT',
    'GROUP',
    'CURRENT',
    'HEADER',
    'CONNECTOR',
    'SIDE',
    'CABLE COLOUR',
    'CABLE COLOR',
  ],
};

const COLUMN_OF: ReadonlyMap<string, Column> = new Map(
  (['label', 'word', 'more', 'other'] as const).flatMap((column) =>
    HEADS[column].map((head) => [head, column] as const),
  ),
);

/** What the columns under a head hold; undefined for a row that is no head. */
export function headOf(cells: readonly string[]): readonly Column[] | undefined {
  if (cells.some((cell) => /\d/.test(cell))) return undefined;
  const columns = cells.map((cell) =>
    /^#$/.test(cell.trim())
      ? 'label'
      : COLUMN_OF.get(
          cell
            .toUpperCase()
            .replace(/[^A-Z]+/g, ' ')
            .trim(),
        ),
  );
  const named = columns.filter((column) => column !== undefined);
  if (named.length < Math.max(1, cells.length / 2) || (cells.length > 1 && named.length < 2))
    return undefined;
  // A signal stands somewhere: in a column of a name that is not known, where no known one is for it.
  const unnamed = columns.includes('word') || columns.includes('more') ? 'other' : 'word';
  return withoutRowCount(
    columns.map((column) => column ?? unnamed),
    cells,
  );
}

/** Of two label columns of different names before all words one only counts the rows: "No. | Pin | Signal". */
function withoutRowCount(columns: readonly Column[], cells: readonly string[]): readonly Column[] {
  const [first, second, ...others] = columns.flatMap((column, at) => (column === 'label' ? [at] : []));
  if (first === undefined || second === undefined || others.length > 0) return columns;
  const wordBefore = columns.slice(0, second).some((column) => column === 'word' || column === 'more');
  const [one, other] = [first, second].map((at) => COUNT.test((cells[at] ?? '').trim()));
  if (wordBefore || one === other) return columns;
  const count = one ? first : second;
  return columns.map((column, at) => (at === count ? 'other' : column));
}

const COUNT = /^(?:n[or]\b|number|#|row)/i;
