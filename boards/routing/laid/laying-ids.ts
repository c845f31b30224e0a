import type { PlugRef } from '../../document/lookup';

/*
 * A laying names things that the sheets do not: runs, connectors as places of the tray, and stretches to
 * them. Their names have signs that no id of a sheet can have, so that none is taken for another.
 */

/** A run by its lead and the plug at its far end. */
export function runId({ lead, plug }: PlugRef): string {
  return `${lead}/${plug}`;
}

const ON_BOARD = 'board/';

/** A connector of the board as a place of the tray. */
export function socketId(connector: string): string {
  return ON_BOARD + connector;
}

/** The connector of the board that a place is; undefined for a place of the tray itself. */
export function connectorAt(place: string): string | undefined {
  return place.startsWith(ON_BOARD) ? place.slice(ON_BOARD.length) : undefined;
}

const STRETCH = '~';

/** The path that a connector of the board brings along, to what lies near it. */
export function stretchId(from: string, to: string): string {
  return from + STRETCH + to;
}

/** True for a path that the tray does not have, but a connector of the board brings along. */
export function isStretch(path: string): boolean {
  return path.includes(STRETCH);
}
