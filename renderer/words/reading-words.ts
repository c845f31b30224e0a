import { ok, type Result, refuse } from '../../boards/base/result';
import {
  LAMP_RESULTS,
  type LampResult,
  type PinReading,
  TOUCH_RESULTS,
  type TouchResult,
} from '../../boards/document/pin-reading';
import type { MeterQuestion } from '../../boards/pinout/meter/identification';
import { answerWords } from '../../boards/pinout/meter-run/outcome-words';
import { TWO_WAYS } from './two-ways';
import { readQuantity } from './value-words';

/** What a meter shows where nothing conducts, as it is typed: "OL", "0L" as it looks on the display, "open", "1 ." */
const OPEN = /^(?:ol|0l|\.ol|0\.l|o\.l|open|inf(?:inite)?|∞|−|-)$/iu;
const JOINED = ['joined', 'apart'] as const;
const BEEPS: Readonly<Record<string, (typeof JOINED)[number]>> = {
  yes: 'joined',
  y: 'joined',
  beep: 'joined',
  no: 'apart',
  n: 'apart',
  silent: 'apart',
};
/** No bench meter shows more on a board. */
const MOST = { ohms: 1e9, volts: 100 } as const;

/** What a reading can be answered with, where it is no number; empty where it is one. */
export function answersTo(question: MeterQuestion): readonly string[] {
  switch (question.kind) {
    case 'ohms':
    case 'volts':
      return [];
    case 'continuity':
      return JOINED;
    case 'touch':
      return TOUCH_RESULTS;
    case 'lamp':
      return LAMP_RESULTS;
  }
}

/** The name of the field that a reading is typed into. */
export function answerLabel(question: MeterQuestion): string {
  switch (question.kind) {
    case 'ohms':
      return 'What the meter shows, in ohms';
    case 'volts':
      return 'What the meter shows, in volts';
    case 'continuity':
      return 'Whether the meter beeps';
    case 'touch':
      return 'What the machine did';
    case 'lamp':
      return 'What the LED did';
  }
}

/** What may be typed there. */
export function answerHint(question: MeterQuestion): string {
  switch (question.kind) {
    case 'ohms':
      return '470, 4.7k or 1M; OL where it shows open. Enter notes it.';
    case 'volts':
      return '3.3 or −0.2. Enter notes it.';
    case 'continuity':
    case 'touch':
    case 'lamp':
      return 'Type the number of an answer, then Enter; or press one.';
  }
}

/** A reading from what was asked and what was typed, or why it is none and what would do. */
export function readReading(question: MeterQuestion, typed: string): Result<PinReading, string> {
  switch (question.kind) {
    case 'ohms': {
      const read = readOhms(typed);
      return read.ok ? ok({ ...question, ohms: read.value }) : read;
    }
    case 'volts': {
      const read = readQuantity(typed, 'V');
      if (!read.ok && read.problem === TWO_WAYS) return read;
      if (!read.ok) return refuse('This is no number of volts. Type one such as 3.3 or −0.2.');
      if (Math.abs(read.value) > MOST.volts)
        return refuse('No pin of a board has so many volts. Type what the meter shows.');
      return ok({ ...question, volts: read.value });
    }
    case 'continuity': {
      const read = readAnswer(JOINED, typed, BEEPS[typed.trim().toLowerCase()]);
      return read.ok
        ? ok({ kind: 'continuity', pins: [...question.pins], joined: read.value === 'joined' })
        : read;
    }
    case 'touch': {
      const read = readAnswer<TouchResult>(TOUCH_RESULTS, typed);
      return read.ok ? ok({ ...question, pins: [...question.pins], did: read.value }) : read;
    }
    case 'lamp': {
      const read = readAnswer<LampResult>(LAMP_RESULTS, typed);
      return read.ok ? ok({ ...question, showed: read.value }) : read;
    }
  }
}

function readOhms(typed: string): Result<number | 'open', string> {
  if (OPEN.test(typed.trim())) return ok('open');
  const read = readQuantity(typed, 'ohm');
  if (!read.ok && read.problem === TWO_WAYS) return read;
  if (!read.ok) return refuse('This is no number of ohms. Type one such as 470 or 4.7k, or OL for open.');
  if (read.value < 0) return refuse('A resistance below zero says that the pin is live. Unplug the machine.');
  return ok(read.value > MOST.ohms ? 'open' : read.value);
}

/** By its number in the list, its word, or the beginning of what is written on its button. */
function readAnswer<Answer extends string>(
  answers: readonly Answer[],
  typed: string,
  meant?: Answer,
): Result<Answer, string> {
  const said = typed.trim().toLowerCase();
  const numbered = answers[Number(said) - 1];
  const found = answers.filter(
    (answer) =>
      said !== '' && (answer.startsWith(said) || answerWords(answer).toLowerCase().startsWith(said)),
  );
  const exact = answers.find((each) => each === said || answerWords(each).toLowerCase() === said);
  const answer = meant ?? numbered ?? exact ?? (found.length === 1 ? found[0] : undefined);
  if (answer !== undefined) return ok(answer);
  return refuse(`Type a number from 1 to ${answers.length}, or press one of the answers.`);
}

/** A tolerance in per cent, without what reckoning in halves leaves behind: "7". */
export function toleranceFigures(share: number): string {
  return String(Number((share * 100).toPrecision(12)));
}

/** A tolerance in per cent as a share; undefined where the field is empty and the usual one holds. */
export function readTolerance(typed: string): Result<number | undefined, string> {
  if (typed.trim() === '') return ok(undefined);
  const said = /^(\d+(?:[.,]\d*)?)\s*%?$/u.exec(typed.trim());
  const share = Number((said?.[1] ?? '').replace(',', '.')) / 100;
  if (said === null || !(share >= 0 && share <= 1)) return refuse('Type per cent from 0 to 100, such as 5.');
  return ok(share);
}
