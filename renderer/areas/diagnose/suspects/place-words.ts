import type { Build } from '../../../../boards/document/build';
import {
  AS_WRITTEN_WORDS,
  exchangedWords,
  movedWords,
  NO_PLACE_WORDS,
  OFF_WORDS,
  outlinedWords,
} from '../../../words/suspected-words';
import type { SuspectedPlace } from './suspected-place';

/**
 * Where a suspect sits, in words.
 *
 * @param leads the seated leads that it is about, which are outlined
 */
export function placeWords(
  build: Build,
  leads: readonly string[],
  place: SuspectedPlace | undefined,
): string {
  if (leads.length === 0) return place ? dashedWords(build, place) : NO_PLACE_WORDS;
  const outlined = outlinedWords(build, leads);
  return place ? `${outlined} ${dashedWords(build, place)}` : outlined;
}

function dashedWords(build: Build, place: SuspectedPlace): string {
  switch (place.kind) {
    case 'moved':
      return movedWords(build, place.now, place.seat);
    case 'exchanged':
      return exchangedWords(build, place.seats);
    case 'off':
      return OFF_WORDS;
    case 'as-written':
      return AS_WRITTEN_WORDS;
  }
}
