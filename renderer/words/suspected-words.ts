import { listed } from '../../boards/base/listed';
import type { Build, Seat } from '../../boards/document/build';
import { leadName } from '../../boards/document/names';
import { seatWords } from './seat-words';

export const NO_PLACE_WORDS = 'This suspect has no place among the leads of this build.';

/** What is outlined on the drawing beside a suspect. */
export function outlinedWords(build: Build, leads: readonly string[]): string {
  return `Outlined: ${listed(leads.map((lead) => leadName(build, lead)))}.`;
}

/** Where a plug may sit instead: by its pins, and how it would be turned against now. */
export function movedWords(build: Build, now: Seat, seat: Seat): string {
  const turn = (seat.turn - now.turn + 360) % 360;
  const turned = turn === 0 ? '' : turn === 180 ? ', the other way round' : ', turned by a quarter';
  return `Dashed: where it may sit: ${seatWords(build, seat)}${turned}.`;
}

export function exchangedWords(build: Build, [one, other]: readonly [Seat, Seat]): string {
  return `Dashed: where both may sit: ${leadName(build, one.lead)} on ${seatWords(build, one)}; ${leadName(build, other.lead)} on ${seatWords(build, other)}.`;
}

export const OFF_WORDS = 'Dashed: its place, which may be empty.';
export const AS_WRITTEN_WORDS = 'It is written down just so in this build.';

/** The few words beside the dashes. */
export const DASHED_LABELS = {
  moved: 'May sit here',
  exchanged: 'May have changed places',
  off: 'May be off',
} as const;
