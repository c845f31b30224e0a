import type { Connector, Pin } from '../../../../boards/document/connector';
import type { Grid } from '../../../../boards/document/grid';
import { pinAt } from '../../../../boards/document/lookup';
import type { Layout } from '../../../../boards/pinout/looks-like/known-layout';
import { SIGNAL_IDS } from '../../../../boards/signals/signals';

/**
 * A header as it is seen from above, row by row: a signal, "key" where no pin stands, "?" where nothing is
 * known. Its pins are counted row by row from the top left, however the board counts them.
 */
export function header(rows: readonly string[], over: Partial<Pin> = {}): Connector {
  const words = rows.map((row) => row.trim().split(/\s+/));
  const cols = words[0]?.length ?? 0;
  const pins = words.flat().flatMap((word, at): readonly Pin[] => {
    const pin = String(at + 1);
    if (word === '?') return [];
    if (word === 'key') return [{ pin, missing: true, ...over }];
    const signal = SIGNAL_IDS.find((id) => id === word);
    if (signal === undefined) throw new Error(`No signal ${word}`);
    return [{ pin, signal, ...over }];
  });
  return {
    id: 'header',
    print: 'HEADER',
    title: 'a header',
    family: 'pin-header',
    grid: byRow(rows.length, cols),
    place: { xMm: 0, yMm: 0, turn: 0 },
    pins,
  };
}

function byRow(rows: number, cols: number): Grid {
  return { rows, cols, pitchMm: 2.54, numbering: { scheme: 'by-row', from: 'top-left' } };
}

/** One of the eight ways to lie, as a person would do it: hold a glass to it, then give it quarter turns. */
export interface Handling {
  readonly mirror: boolean;
  readonly quarters: number;
}

export const HANDLINGS: readonly Handling[] = [false, true].flatMap((mirror) =>
  [0, 1, 2, 3].map((quarters) => ({ mirror, quarters })),
);

/** A table of anything, handled so: columns read backwards, then columns made rows from the bottom up. */
export function handled<T>(table: readonly (readonly T[])[], { mirror, quarters }: Handling): T[][] {
  let rows = table.map((row) => (mirror ? row.toReversed() : [...row]));
  for (let turn = 0; turn < quarters; turn++)
    rows = (rows[0] ?? []).map((_, col) => rows.map((row) => row[col] as T).toReversed());
  return rows;
}

/** The pins of a layout as a table, seen from above; undefined where it has no position. */
export function tableOf(layout: Layout): (Pin | undefined)[][] {
  const { rows, cols } = layout.grid;
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: cols }, (__, col) => pinAt(layout, [row, col])),
  );
}

/** A header that carries what a layout carries, handled so, and counted row by row. */
export function lying(layout: Layout, handling: Handling): Connector {
  const table = handled(tableOf(layout), handling);
  const numbered = table.flat().map((pin, at) => pin && { ...pin, pin: String(at + 1) });
  const cols = table[0]?.length ?? 0;
  const grid: Grid = {
    ...layout.grid,
    ...byRow(table.length, cols),
    pitchMm: layout.grid.pitchMm,
    ...(numbered.includes(undefined) && {
      numbering: {
        scheme: 'free' as const,
        labels: table.map((row, r) => row.map((pin, c) => (pin ? String(r * cols + c + 1) : null))),
      },
    }),
  };
  return { ...header(['?']), grid, pins: numbered.filter((pin) => pin !== undefined) };
}
