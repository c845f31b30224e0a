import { byIdentity } from '../../base/by-identity';
import type { BoardSheet } from '../../document/board-sheet';
import type { Build } from '../../document/build';

/** The same small boards for the same board, so that what is known of them is found again. */
const smallBoards = byIdentity((_: BoardSheet) => new Map<string, BoardSheet>());

/**
 * The part of a build that wrong seats on some connectors can change: those connectors, and those with the
 * inputs of the buttons, with what is seated there. Rails are stiff, so the rest shows the same as before.
 */
export function narrowed(build: Build, connectors: readonly string[], leads: readonly string[]): Build {
  const kept = build.board.connectors.filter(
    ({ id, pins }) => connectors.includes(id) || pins.some(({ signal }) => isButtonInput(signal)),
  );
  const key = kept.map(({ id }) => id).join(' ');
  const known = smallBoards(build.board);
  let board = known.get(key);
  if (board === undefined) {
    board = { ...build.board, connectors: kept };
    known.set(key, board);
  }
  const ids = new Set(kept.map(({ id }) => id));
  const seats = build.seats.filter(({ connector }) => ids.has(connector));
  const stays = new Set([...leads, ...seats.map(({ lead }) => lead)]);
  return {
    ...build,
    board,
    seats,
    case: { ...build.case, leads: build.case.leads.filter(({ id }) => stays.has(id)) },
    extras: build.extras.filter(({ id }) => stays.has(id)),
  };
}

function isButtonInput(signal: string | undefined): boolean {
  return signal === 'power-switch-input' || signal === 'reset-switch-input';
}
