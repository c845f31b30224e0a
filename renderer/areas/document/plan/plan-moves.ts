import type { Mm } from '../../../../boards/base/units';
import type { Build } from '../../../../boards/document/build';
import type { Connector, Place } from '../../../../boards/document/connector';
import { connectorOf } from '../../../../boards/document/lookup';
import { connectorName } from '../../../../boards/document/names';
import { labelOf } from '../../../../boards/edit/apply';
import { movedPlace, turnedPlace } from '../../../../boards/fit/board-place';
import { boardRemarks } from '../../../../boards/fit/board-remarks';
import { freePlace } from '../../../../boards/fit/free-place';
import { doCommand } from '../../../do-command';
import { freshId } from '../../../files/file-name';
import { placeOnBoardWords, remarkWords } from '../../../words/plan-words';
import type { Workbench } from '../../../workbench';
import { nextPrint } from './next-print';

type Bench = Pick<Workbench, 'editor' | 'session'>;

function buildOf({ editor }: Bench): Build | undefined {
  return editor.getState().open?.history.present;
}

/** The connector that is chosen, also by one of its pins. */
export function chosenOnPlan(bench: Bench): Connector | undefined {
  const { selection } = bench.session.getState();
  const build = buildOf(bench);
  return build && selection.kind === 'connector' ? connectorOf(build.board, selection.connector) : undefined;
}

/** Moves the chosen connector a little further, as a preview; `drop` makes one step of all of it. */
export function nudge(bench: Bench, xMm: Mm, yMm: Mm): void {
  const connector = chosenOnPlan(bench);
  if (connector === undefined) return;
  const { moving, move } = bench.session.getState();
  const from = moving?.connector === connector.id ? moving.place : connector.place;
  move({ connector: connector.id, place: movedPlace(from, xMm, yMm) });
}

/** Puts the connector down where it is shown. One command, or none where it stands as before. */
export function drop(bench: Bench): void {
  const { moving, move } = bench.session.getState();
  if (moving === null) return;
  move(null);
  place(bench, moving.connector, moving.place);
}

/** Turns the chosen connector about its middle. */
export function turn(bench: Bench, by: 90 | 180 | 270): void {
  drop(bench);
  const connector = chosenOnPlan(bench);
  if (connector) place(bench, connector.id, turnedPlace(connector, by));
}

/** Sets where a connector stands, and says it with whatever cannot be so there. */
export function place(bench: Bench, id: string, to: Place): void {
  const before = buildOf(bench);
  const stands = before && connectorOf(before.board, id);
  if (!before || !stands) return;
  const { place: stood } = stands;
  if (stood.xMm === to.xMm && stood.yMm === to.yMm && stood.turn === to.turn) return;
  const command = { name: 'place-connector', args: { connector: id, place: to } } as const;
  if (!doCommand(bench, command)) return;
  const after = buildOf(bench);
  if (!after) return;
  const remark = boardRemarks(after.board).find((each) =>
    'connectors' in each ? each.connectors.includes(id) : 'connector' in each && each.connector === id,
  );
  const words = `${labelOf(before, command)}: ${placeOnBoardWords({ ...stands, place: to })}.`;
  bench.session.getState().tell(remark ? `${words} ${remarkWords(after, remark)}` : words);
}

/** Takes the chosen connector off the board, with the plugs that sit on it. */
export function remove(bench: Bench): void {
  bench.session.getState().move(null);
  const connector = chosenOnPlan(bench);
  if (connector) doCommand(bench, { name: 'remove-connector', args: { connector: connector.id } });
}

/** Puts a second one like the chosen connector beside it, and chooses that. */
export function duplicate(bench: Bench): void {
  drop(bench);
  const connector = chosenOnPlan(bench);
  if (connector) addLike(bench, connector);
}

/** Keeps the chosen connector for pasting, on this board or on another one opened later. */
export function copy(bench: Bench): void {
  const connector = chosenOnPlan(bench);
  const build = buildOf(bench);
  if (!connector || !build) return;
  bench.session.getState().keepCopy(connector);
  bench.session.getState().tell(`Copied ${connectorName(build, connector.id)}. Paste it with Ctrl+V.`);
}

/** Puts the copied connector on the board, near where it was copied. */
export function paste(bench: Bench): void {
  const { copied, tell } = bench.session.getState();
  if (copied === null) tell('Nothing is copied yet. Choose a connector and copy it first.');
  else addLike(bench, copied);
}

function addLike(bench: Bench, pattern: Connector): void {
  const build = buildOf(bench);
  if (!build) return;
  const { connectors } = build.board;
  const id = freshId(pattern.id, 'connector', new Set(connectors.map((each) => each.id)));
  const print = nextPrint(pattern.print, new Set(connectors.map((each) => each.print)));
  const like = { ...pattern, id, print };
  const connector = { ...like, place: freePlace(build.board, like, pattern.place) };
  const command = { name: 'add-connector', args: { connector } } as const;
  if (!doCommand(bench, command)) return;
  const { select, tell } = bench.session.getState();
  select({ kind: 'connector', connector: id });
  tell(`${labelOf(build, command)}: ${placeOnBoardWords(connector)}.`);
}

/** Chooses the next connector of the sheet, or the one before; false past the last, so that the focus can go on. */
export function walk(bench: Bench, by: 1 | -1): boolean {
  drop(bench);
  const build = buildOf(bench);
  if (!build) return false;
  const { connectors } = build.board;
  const { selection, select, announce } = bench.session.getState();
  const at =
    selection.kind === 'connector' ? connectors.findIndex(({ id }) => id === selection.connector) : -1;
  const next = at < 0 ? (by === 1 ? 0 : connectors.length - 1) : at + by;
  const connector = connectors[next];
  if (connector === undefined) return false;
  select({ kind: 'connector', connector: connector.id });
  announce(`${connectorName(build, connector.id)}, ${placeOnBoardWords(connector)}`);
  return true;
}

/** Opens the page of the chosen connector's pins. */
export function openPins(bench: Bench): void {
  drop(bench);
  if (chosenOnPlan(bench)) bench.session.getState().showPage('connector');
}

/** Takes a move back that is under way; without one nothing is chosen any more. */
export function cancel({ session }: Bench): void {
  const { moving, move, select } = session.getState();
  if (moving) move(null);
  else select({ kind: 'nothing' });
}
