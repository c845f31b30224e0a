import type { Build } from '../../boards/document/build';
import type { Mark, Suspected } from './canvas-props';

/** What the drawing shows, in a sentence; everything in it is also in the lists beside it. */
export function boardWords(build: Build, marks: readonly Mark[], suspected: Suspected | null = null): string {
  const { board, seats, view } = build;
  const lies = [
    view.turn === 0 ? '' : `turned by ${view.turn}\u00a0degrees`,
    view.mirrored ? 'mirrored' : '',
  ].filter((part) => part !== '');
  const drawn = [
    `Drawing of ${board.name}`,
    counted(board.connectors.length, 'connector'),
    `${counted(seats.length, 'plug')} seated`,
    ...(marks.length === 0 ? [] : [counted(marks.length, 'mark')]),
    ...lies,
  ].join(', ');
  return suspected === null ? drawn : `${drawn}. ${suspected.words}`;
}

function counted(number: number, noun: string): string {
  return `${number}\u00a0${noun}${number === 1 ? '' : 's'}`;
}
