import type { BoardSheet } from '../../document/board-sheet';
import type { Connector, Pin } from '../../document/connector';
import { differingFields } from './differing-fields';
import { matchConnectors, sameSize } from './match-connectors';
import { matchPins } from './match-pins';

/** One pin in two sheets. */
export interface PinRow {
  /** By which a choice names this row. */
  readonly key: string;
  readonly mine: Pin | null;
  readonly theirs: Pin | null;
  /** The names of what differs, as the file has them; "pin" where it is counted differently. None: the same. */
  readonly fields: readonly string[];
}

/** One connector in two sheets. */
export interface ConnectorRow {
  readonly key: string;
  readonly mine: Connector | null;
  readonly theirs: Connector | null;
  /** What differs of the connector itself: "print", "place", "numbering", "grid" and so on. */
  readonly fields: readonly string[];
  /** Whether pins can be taken one by one: only where both have as many rows and columns. */
  readonly pinByPin: boolean;
  readonly pins: readonly PinRow[];
}

/** Two board sheets, laid over each other. */
export interface BoardComparison {
  readonly mine: BoardSheet;
  readonly theirs: BoardSheet;
  readonly fields: readonly SheetRow[];
  readonly connectors: readonly ConnectorRow[];
}

/** Something that is said once of a whole sheet, and differs. */
export interface SheetRow {
  readonly key: string;
  readonly field: string;
}

/** A sheet is told from another by its id, and says where its schema lies: no statement about the board. */
const NO_STATEMENT = ['format', 'version', 'id', '$schema', 'connectors', 'leads'];

/** What of two sheets as a whole differs. */
export function sheetRows(mine: object, theirs: object): readonly SheetRow[] {
  return differingFields(mine, theirs, NO_STATEMENT).map((field) => ({ key: `sheet ${field}`, field }));
}

/** Lays two sheets of a board over each other and lists what differs, connector by connector, pin by pin. */
export function compareBoards(mine: BoardSheet, theirs: BoardSheet): BoardComparison {
  return {
    mine,
    theirs,
    fields: sheetRows(mine, theirs),
    connectors: matchConnectors(mine.connectors, theirs.connectors).map((pair) =>
      connectorRow(pair.mine, pair.theirs),
    ),
  };
}

function connectorRow(mine: Connector | null, theirs: Connector | null): ConnectorRow {
  const id = mine?.id ?? `+${theirs?.id}`;
  const key = `connector ${id}`;
  if (mine === null || theirs === null)
    return { key, mine, theirs, fields: ['connector'], pinByPin: false, pins: [] };
  return {
    key,
    mine,
    theirs,
    fields: differingFields(laidOpen(mine), laidOpen(theirs), ['id', 'pins']),
    pinByPin: sameSize(mine, theirs),
    pins: matchPins(mine, theirs).map((pair) => ({
      ...pair,
      key: `pin ${id} ${pair.mine?.pin ?? `+${pair.theirs?.pin}`}`,
      fields: pinFields(pair.mine, pair.theirs),
    })),
  };
}

/** A connector with its numbering beside the rest of its grid: they differ, and are taken, apart. */
export function laidOpen({ grid: { numbering, ...grid }, ...connector }: Connector) {
  return { ...connector, grid, numbering };
}

function pinFields(mine: Pin | null, theirs: Pin | null): readonly string[] {
  if (mine !== null && theirs !== null) return differingFields(mine, theirs, []);
  return ['pin'];
}

/** How many rows of a comparison differ. */
export function countDifferences({ fields, connectors }: BoardComparison): number {
  const inConnectors = connectors.reduce(
    (sum, row) =>
      sum + Math.min(1, row.fields.length) + row.pins.filter((pin) => pin.fields.length > 0).length,
    0,
  );
  return fields.length + inConnectors;
}
