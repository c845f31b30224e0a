import type { BoardSheet } from '../../document/board-sheet';
import type { Connector, Pin, PinSource } from '../../document/connector';
import { type Letters, printable } from '../page/letters';

interface Printable {
  readonly board: BoardSheet;
  /** Whether any sign had to be replaced. */
  readonly replaced: boolean;
}

/** The sheet with every text of it as it can be printed. Ids and labels are plain letters already. */
export function printableSheet(sheet: BoardSheet, letters: Pick<Letters, 'has'>): Printable {
  let replaced = false;
  const shown = (text: string) => {
    const set = printable(text, letters);
    if (set !== text.normalize('NFC')) replaced = true;
    return set;
  };
  const board = {
    ...sheet,
    name: shown(sheet.name),
    connectors: sheet.connectors.map((connector) => shownConnector(connector, shown)),
    ...(sheet.notes !== undefined && { notes: shown(sheet.notes) }),
  };
  return { board, replaced };
}

type Shown = (text: string) => string;

function shownConnector(connector: Connector, shown: Shown): Connector {
  return {
    ...connector,
    print: shown(connector.print),
    title: shown(connector.title),
    pins: connector.pins.map((pin) => shownPin(pin, shown)),
    ...(connector.notes !== undefined && { notes: shown(connector.notes) }),
  };
}

function shownPin(pin: Pin, shown: Shown): Pin {
  return {
    ...pin,
    ...(pin.print !== undefined && { print: shown(pin.print) }),
    ...(pin.name !== undefined && { name: shown(pin.name) }),
    ...(pin.notes !== undefined && { notes: shown(pin.notes) }),
    ...(pin.source !== undefined && { source: shownSource(pin.source, shown) }),
    ...(pin.alternatives !== undefined && {
      alternatives: pin.alternatives.map((other) => ({
        ...other,
        source: shownSource(other.source, shown),
        ...(other.name !== undefined && { name: shown(other.name) }),
      })),
    }),
  };
}

function shownSource(source: PinSource, shown: Shown): PinSource {
  return { ...source, ...(source.where !== undefined && { where: shown(source.where) }) };
}
