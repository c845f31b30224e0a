import { z } from 'zod';
import { LIMITS } from './limits';

/** A text of one shape; the words say what it looks like, to people and in the published schemas. */
export function shaped(pattern: RegExp, words: string) {
  return z.string().regex(pattern, words).describe(words);
}

/** A name made for files and references: lower-case letters, digits and hyphens. */
export const IdZ = shaped(
  new RegExp(`^(?=.{1,${LIMITS.idLength}}$)[a-z0-9]+(?:-[a-z0-9]+)*$`),
  `an id: up to ${LIMITS.idLength} lower-case letters and digits, joined by single hyphens`,
);

/** One line of text as a person types it. */
export const LineZ = z.string().max(LIMITS.textLength);

/** A line that says something. */
export const NameZ = LineZ.min(1);

export const NotesZ = z.string().max(LIMITS.noteLength);

/** The label of a pin or a hole: "1", "10", "A12". */
export const LabelZ = shaped(
  /^[A-Za-z0-9+-]{1,8}$/,
  'a pin or hole label: up to eight letters, digits, + or -',
);
