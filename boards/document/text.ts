import { z } from 'zod';
import { LIMITS } from './limits';
import { count } from './problem/shown-value';

/** A text of one shape; the words say what it looks like, to people and in the published schemas. */
export function shaped(pattern: RegExp, words: string) {
  return z.string().regex(pattern, words).describe(words);
}

/** A name made for files and references: lower-case letters, digits and hyphens. */
export const IdZ = shaped(
  new RegExp(`^(?=.{1,${LIMITS.idLength}}$)[a-z0-9]+(?:-[a-z0-9]+)*$`),
  `an id: up to ${LIMITS.idLength} lower-case letters and digits, joined by single hyphens`,
);

/** What a step of the work is remembered by: words of ids, labels and cells with single spaces between. */
export const StepIdZ = shaped(
  new RegExp(`^(?=.{1,${LIMITS.stepLength}}$)[A-Za-z0-9+.,-]+(?: [A-Za-z0-9+.,-]+)*$`),
  `the name of a step: up to ${LIMITS.stepLength} letters, digits, plain signs and single spaces`,
);

/** What an observation, a trial or a result is called in a log: words of ids, joined by hyphens and colons. */
export const CodeZ = shaped(
  new RegExp(`^(?=.{1,${LIMITS.codeLength}}$)[a-z0-9]+(?:[-:][a-z0-9]+)*$`),
  `a code: up to ${LIMITS.codeLength} lower-case letters and digits, joined by single hyphens or colons`,
);

export const DayZ = z.iso.date().describe('a day of the calendar, as 2026-11-26');

/** Characters that nobody types, as they stand in a pattern. */
const CONTROLS = String.raw`\u0000-\u001f\u007f-\u009f`;
const CONTROLS_BUT_BREAKS = String.raw`\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f`;
const OTHER_BREAKS = String.raw`\u2028\u2029`;
/** They turn the direction of writing round, so that a name reads as another. */
const TURNINGS = String.raw`\u202a-\u202e\u2066-\u2069`;

/** Half of a pair of code units is no letter, and no file of UTF-8 can hold it. */
const HALVES = /\p{Cs}/u;
const isWhole = (text: string): boolean => !HALVES.test(text);

/** One line of text as a person types it. */
export const LineZ = z
  .string()
  .max(LIMITS.textLength)
  .regex(new RegExp(`^[^${CONTROLS}${OTHER_BREAKS}${TURNINGS}]*$`))
  .refine(isWhole);

/** A line that says something. */
export const NameZ = LineZ.min(1);

export const NotesZ = z
  .string()
  .max(LIMITS.noteLength)
  .regex(new RegExp(`^[^${CONTROLS_BUT_BREAKS}${TURNINGS}]*$`))
  .refine(isWhole)
  .describe(`a text of at most ${count(LIMITS.noteLength)} plain characters`);

/** A remark in a log: a few lines that say something. */
export const RemarkZ = z
  .string()
  .min(1)
  .max(LIMITS.remarkLength)
  .regex(new RegExp(`^[^${CONTROLS_BUT_BREAKS}${TURNINGS}]*$`))
  .refine(isWhole)
  .describe(`a text of 1 to ${count(LIMITS.remarkLength)} plain characters`);

/** Where an editor finds the published schema of a file. Nothing is fetched from there; it is kept as it is. */
export const SchemaAddressZ = z
  .string()
  .max(LIMITS.schemaAddressLength)
  .regex(new RegExp(`^[^${CONTROLS}${OTHER_BREAKS}${TURNINGS}]*$`))
  .refine(isWhole)
  .describe(`the path or address of this schema, of at most ${count(LIMITS.schemaAddressLength)} characters`);

/** The label of a pin or a hole: "1", "10", "A12". */
export const LabelZ = shaped(
  /^[A-Za-z0-9+-]{1,8}$/,
  'a pin or hole label: up to eight letters, digits, + or -',
);
