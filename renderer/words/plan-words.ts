import type { BoardSheet } from '../../boards/document/board-sheet';
import type { Build } from '../../boards/document/build';
import type { Connector } from '../../boards/document/connector';
import { LIMITS } from '../../boards/document/limits';
import { connectorName } from '../../boards/document/names';
import type { Outline } from '../../boards/document/outline';
import type { BoardRemark } from '../../boards/fit/board-remarks';
import { firstPin } from '../../boards/fit/first-pin';
import { formFactorEntry, formFactorOutline } from '../../boards/library/form-factors';
import { mmWords } from './length-words';
import { counted } from './list-words';
import { turnWords } from './seat-words';

/** "214 mm from the left, 234 mm from the top, turned by half": where pin 1 of a connector is. */
export function placeOnBoardWords(connector: Pick<Connector, 'grid' | 'place'>): string {
  const { xMm, yMm } = firstPin(connector);
  const turned = turnWords(connector.place.turn);
  return `${mmWords(xMm)} from the left, ${mmWords(yMm)} from the top, ${turned === '' ? 'not turned' : turned}`;
}

/** Everything that cannot be so on this plan, in sentences; the size against its form factor first. */
export function planRemarkWords(build: Build, remarks: readonly BoardRemark[]): readonly string[] {
  return [...sizeWords(build.board.outline), ...remarks.map((remark) => remarkWords(build, remark))];
}

/** One remark in a sentence that names what to look at again. */
export function remarkWords(build: Build, remark: BoardRemark): string {
  switch (remark.code) {
    case 'connector-outside':
      return `${connectorName(build, remark.connector)} lies outside the board. Drag it onto the board, or set its place.`;
    case 'connector-over-edge':
      return `${connectorName(build, remark.connector)} stands out over the edge of the board. Look at its place and at the board’s size again.`;
    case 'connectors-overlap': {
      const [one, other] = remark.connectors;
      return `${connectorName(build, one)} and ${connectorName(build, other)} stand in one place. Measure where each is.`;
    }
    case 'hole-outside':
      return `Mounting hole ${holeName(build.board, remark.hole)} is not wholly on the board. Look at its place and at the board’s size again.`;
    case 'hole-under-connector':
      return `${connectorName(build, remark.connector)} stands over mounting hole ${holeName(build.board, remark.hole)}. Measure where each is.`;
  }
}

function sizeWords({ formFactor, rear = 'top', widthMm, depthMm }: Outline): readonly string[] {
  if (formFactor === undefined) return [];
  const { name } = formFactorEntry(formFactor);
  const outline = formFactorOutline(formFactor, rear);
  if (widthMm <= outline.widthMm && depthMm <= outline.depthMm) return [];
  return [
    `The board is larger than ${name} allows: at most ${mmWords(outline.widthMm)} by ${mmWords(outline.depthMm)}. Choose another form factor, or “free size”.`,
  ];
}

/** What a hole is called: its letter, or which one of the list it is. */
export function holeName({ outline }: BoardSheet, id: string): string {
  const holes = outline.holes ?? [];
  const at = holes.findIndex((hole) => hole.id === id);
  const hole = holes[at];
  if (hole === undefined) return id;
  return hole.label || `number\u00a0${at + 1}`;
}

export const PLAN_CLEAR_WORDS = 'Every connector and every hole has a place of its own on the board.';

/** Said when the holes of a form factor take the place of others that somebody had set down. */
export function holesReplacedWords(count: number): string {
  return `Its holes took the place of ${counted(count, 'hole')} that had been set down; undo brings ${count === 1 ? 'it' : 'them'} back.`;
}

export const HOLES_FULL_WORDS = `A board can hold no more than ${LIMITS.mountingHoles}\u00a0mounting holes. Remove one first.`;

/** Where the size and the holes of a form factor were read, and which of them to measure. */
export function formFactorWords({ formFactor }: Outline): readonly string[] {
  if (formFactor === undefined) return [];
  const { size, letters, places, diameter, doubtful } = formFactorEntry(formFactor);
  const read = [size, letters, places, diameter].map(({ source }) => source.where ?? '');
  const measure =
    doubtful.length === 0
      ? []
      : [
          `Doubtful: ${doubtful.join(' and ')}; the specification says they support the front edge. Measure them.`,
        ];
  return [
    `Size: ${read[0]}.`,
    `Letters: ${read[1]}.`,
    `Places: ${read[2]}.`,
    `Diameter: ${read[3]}.`,
    ...measure,
  ];
}
