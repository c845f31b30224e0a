import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvText } from '../../../boards/handover/csv';
import { fromToOf } from '../../../boards/handover/from-to';
import { demo } from '../findings/demo';

const anyField = fc.oneof(
  fc.string(),
  fc.constantFrom('=1+1', '+5 V', '-', '@x', '"', 'a,b', 'a\r\nb', ' =1', '\u200b=1', '\t=1', '|x', '−12 V'),
);

describe('comma-separated values', () => {
  it('are read back as they were by an npm parser (csv-parse), but for the apostrophe before formulas', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(anyField, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 6 }),
        (rows) => {
          const width = rows[0]?.length ?? 0;
          const even = rows.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? ''));
          const read = parse(csvText(even), {
            record_delimiter: '\r\n',
            skip_empty_lines: false,
          }) as string[][];
          expect(read.map((row) => row.map(plain))).toEqual(even.map((row) => row.map(plain)));
        },
      ),
      { numRuns: 2_000 },
    );
  });

  it('hold no field that a spreadsheet would carry out: none begins with = + - @ or a tab', () => {
    fc.assert(
      fc.property(fc.array(anyField, { minLength: 1 }), (row) => {
        const [read = []] = parse(csvText([[...row, 'end']]), { record_delimiter: '\r\n' }) as string[][];
        for (const cell of read) expect(cell.trimStart()).not.toMatch(/^[=+\-@\t]/);
      }),
    );
  });

  it('follow RFC 4180, 2: quotes doubled inside quotes, CRLF at the end of each row', () => {
    expect(csvText([['a', 'b"c', 'd,e']])).toBe('a,"b""c","d,e"\r\n');
  });
});

/** Without the apostrophe that was put before it. */
function plain(value: string): string {
  return value.replace(/^'/, '');
}

describe('the from-to list of the demo', () => {
  const rows = fromToOf(demo('wired'));

  it('has each wire end on the board once, from part to pin', () => {
    expect(rows.filter(({ lead }) => lead === 'Power switch')).toEqual([
      expect.objectContaining({
        from: 'power switch first leg',
        connector: 'PANEL',
        pin: '6',
        signal: 'power switch',
      }),
      expect.objectContaining({
        from: 'power switch second leg',
        connector: 'PANEL',
        pin: '8',
        signal: 'ground',
      }),
    ]);
    expect(new Set(rows.map(({ lead, plug, hole, colour }) => [lead, plug, hole, colour].join())).size).toBe(
      rows.length,
    );
  });
});
