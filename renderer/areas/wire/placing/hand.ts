import type { Build, Seat } from '../../../../boards/document/build';
import { leadOf, type PlugRef, plugOf, seatOf, unitsOf, unitWith } from '../../../../boards/document/lookup';
import { placesOf } from '../../../../boards/fit/places';
import { properSeats } from '../../../../boards/fit/proper-seats';
import { doCommand } from '../../../do-command';
import { plugTitle } from '../../../words/plug-words';
import { seatWords } from '../../../words/seat-words';
import type { Workbench } from '../../../workbench';
import { goToBoard } from '../go-to-board';
import { candidateWords } from './candidate-words';
import type { PlacingKey } from './keys';
import { previewSeat, seatArgs } from './preview';
import { firstCandidate, otherConnector, stepCandidate, turnedBy } from './steps';

/** What the stores are asked for while a plug is in the hand. */
export type HandTools = Pick<Workbench, 'editor' | 'session' | 'canvas'>;

function buildOf({ editor }: HandTools): Build | undefined {
  return editor.getState().open?.history.present;
}

export function plugTitleOf(build: Build, ref: PlugRef): string {
  const lead = leadOf(build, ref.lead);
  const plug = plugOf(build, ref);
  return lead && plug ? plugTitle(lead, plug) : ref.lead;
}

/**
 * Takes a plug into the hand, to be put down by click or key; it begins where it belongs. Only the Wire area has the
 * hand, so it is gone to.
 */
export function carry(tools: HandTools, plug: PlugRef): void {
  const build = buildOf(tools);
  if (build === undefined) return;
  if (isForUnits(build, plug)) {
    // The drawing shows the board alone: places on a unit are chosen from the list of them.
    tools.session.getState().openDialog({ kind: 'places', plug });
    return;
  }
  const candidate = firstCandidate(build, plug, properSeats(build, plug)[0]);
  goToBoard(tools, candidate === null ? [] : [candidate.connector]);
  tools.session.getState().take(plug, candidate, candidate?.turn ?? 0, 'carry');
  if (candidate === null) return;
  announceCandidate(tools, build, candidate, `${plugTitleOf(build, plug)} in the hand. `);
}

/** Whether a plug sits on a unit, or could be put on units alone. */
function isForUnits(build: Build, plug: PlugRef): boolean {
  const now = seatOf(build, plug);
  if (now) return unitWith(build, now.connector) !== undefined;
  if (unitsOf(build).length === 0) return false;
  const places = placesOf(build, plug);
  return places.length > 0 && places.every(({ connector }) => unitWith(build, connector) !== undefined);
}

/** Takes a plug into the hand under the pointer, to be put down when the button is let go. */
export function drag(tools: HandTools, plug: PlugRef): void {
  const build = buildOf(tools);
  if (build === undefined) return;
  tools.session.getState().take(plug, null, seatOf(build, plug)?.turn ?? 0, 'drag');
}

/** Moves what is in the hand by a key, and says what would be. */
export function pressKey(tools: HandTools, key: PlacingKey): void {
  const build = buildOf(tools);
  const { placing } = tools.session.getState();
  if (build === undefined || placing === null) return;
  const { candidate } = placing;
  switch (key.kind) {
    case 'cancel':
      cancelHand(tools);
      return;
    case 'seat':
      if (candidate) seatHand(tools);
      return;
    case 'turn': {
      const turn = turnedBy(placing.turn, key.by);
      const turned = candidate && { ...candidate, turn };
      tools.session.getState().turnInHand(turn, turned);
      if (turned) announceCandidate(tools, build, turned);
      return;
    }
    case 'step':
      if (candidate) aim(tools, build, stepCandidate(build, candidate, key.direction));
      return;
    case 'connector':
      if (candidate) aim(tools, build, otherConnector(build, candidate, key.by));
      return;
  }
}

function aim(tools: HandTools, build: Build, seat: Seat): void {
  const before = tools.session.getState().placing?.candidate?.connector;
  tools.session.getState().aim(seat);
  if (before !== seat.connector) tools.canvas.current?.show([seat.connector]);
  announceCandidate(tools, build, seat);
}

function announceCandidate(tools: HandTools, build: Build, seat: Seat, before = ''): void {
  const words = candidateWords(build, seat, previewSeat(build, seat));
  tools.session.getState().announce(before + words);
}

/** Seats what is in the hand on its candidate; what does not fit stays in the hand and is told why. */
export function seatHand(tools: HandTools): void {
  const { placing } = tools.session.getState();
  if (placing === null) return;
  if (placing.candidate === null) {
    if (placing.by === 'drag') cancelHand(tools);
    return;
  }
  const seated = seatAt(tools, placing.candidate);
  if (seated || placing.by === 'drag') tools.session.getState().letGo();
}

/** Seats a plug; says where it sits now, or why it cannot. */
export function seatAt(tools: HandTools, seat: Seat): boolean {
  const seated = doCommand(tools, { name: 'seat-plug', args: seatArgs(seat) });
  const build = buildOf(tools);
  if (!seated || build === undefined) return false;
  tools.session.getState().letGo();
  tools.session.getState().select({ kind: 'plug', plug: { lead: seat.lead, plug: seat.plug } });
  tools.session.getState().tell(`${plugTitleOf(build, seat)} seated on ${seatWords(build, seat)}.`);
  return true;
}

/** Puts the plug back where it was. */
export function cancelHand(tools: HandTools): void {
  const build = buildOf(tools);
  const { placing } = tools.session.getState();
  if (placing === null) return;
  tools.session.getState().letGo();
  if (build) tools.session.getState().announce(`${plugTitleOf(build, placing.plug)} put back.`);
}

/** Seats the plug in the hand with its first hole on a pin, turned as it is held. */
export function seatOnPin(tools: HandTools, connector: string, cell: Seat['at']): void {
  const { placing } = tools.session.getState();
  if (placing === null) return;
  seatAt(tools, { ...placing.plug, connector, at: cell, turn: placing.turn });
}
