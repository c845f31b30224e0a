import { listed } from '../../base/listed';
import { percent } from '../../base/percent';
import type { Mm } from '../../base/units';
import { CAUSES } from '../../diagnosis/faults/causes';
import { lineWords, resultName, trialWordsIn } from '../../diagnosis/log/log-words';
import type { ReadLine } from '../../diagnosis/log/read-log';
import type { Reckoning } from '../../diagnosis/log/reckoning';
import { observationNamed } from '../../diagnosis/observations/observations';
import { trialCautions } from '../../diagnosis/trials/cautions';
import type { Trial } from '../../diagnosis/trials/trial';
import { RISK_WORDS, resultWords } from '../../diagnosis/trials/words';
import { doubleWords } from '../../diagnosis/words';
import type { Build } from '../../document/build';
import type { Measure } from '../../drawing/measure';
import { gap, type Piece, type Strip } from '../page/flow';
import { linesOf } from '../page/paragraph';
import { goingOn, tableOf } from '../page/table';
import { lineHeight, linesAt, TYPES } from '../page/type';
import { paragraph } from '../pinout/connector-section';
import { troubleHeading } from './heading';
import { tickLine, yesNoLine } from './ticked';
import { NO_TRIAL, NOTHING_LOGGED, TROUBLE_TITLES } from './trouble-words';

/** Everything that the parts of a trouble sheet tell of. */
export interface Trouble {
  readonly build: Build;
  readonly lines: readonly ReadLine[];
  readonly trials: readonly Trial[];
  readonly reckoning: Reckoning;
}

/** Suspects, questions and trials that are printed: paper is for the next hour, not for all that may come. */
const PRINTED = { suspects: 8, looks: 5, trials: 3 } as const;

const STEP_LEFT: Mm = 6;

/** Suspects with their chances, the likeliest fault of each, and the lines that speak for it and against it. */
export function suspectsPart({ reckoning }: Trouble, widthMm: Mm, measure: Measure): readonly Piece[] {
  const columns = [
    { title: 'Chance', widthMm: widthMm * 0.12, type: TYPES.strong },
    { title: 'Suspect', widthMm: widthMm * 0.32, type: TYPES.cell },
    { title: 'Above all', widthMm: widthMm * 0.34, type: TYPES.cell },
    { title: 'For it', widthMm: widthMm * 0.11, type: TYPES.cell },
    { title: 'Against', widthMm: widthMm * 0.11, type: TYPES.cell },
  ];
  const suspects = reckoning.suspects
    .slice(0, PRINTED.suspects)
    .map(({ cause, chance, faults: [first], speaksFor, speaksAgainst }) => ({
      chance,
      cells: [CAUSES[cause], first?.name ?? '', numbers(speaksFor), numbers(speaksAgainst)],
    }));
  const doubles = reckoning.doubles.map(({ causes, chance, names }) => ({
    chance,
    cells: [doubleWords({ causes }), names.join(' '), '', ''],
  }));
  const none = { chance: reckoning.noneOfThese, cells: ['none of these', '', '', ''] };
  const rows = [...suspects, ...doubles, none]
    .sort((one, other) => other.chance - one.chance)
    .map(({ chance, cells }) => [percent(chance), ...cells]);
  const goesOn = goingOn(`${TROUBLE_TITLES.suspects}, continued`, widthMm, measure);
  return [
    ...troubleHeading('suspects', widthMm, measure),
    ...tableOf(columns, rows, { leftMm: 0, goesOn }, measure),
    gap(5),
  ];
}

function numbers(places: readonly number[]): string {
  return places.length === 0 ? '–' : listed(places.map((at) => String(at + 1)));
}

/** The most telling questions with boxes for their answers. */
export function looksPart({ reckoning }: Trouble, widthMm: Mm, measure: Measure): readonly Piece[] {
  const asked = reckoning.looks.slice(0, PRINTED.looks).flatMap(({ id }) => observationNamed(id) ?? []);
  if (asked.length === 0) return [];
  return [
    ...troubleHeading('looks', widthMm, measure),
    ...asked.map(
      ({ question, sign }): Piece => ({ kind: 'strip', strip: yesNoLine(question, sign, widthMm, measure) }),
    ),
    gap(4),
  ];
}

/** The best trials: what to mind, the steps, and a box for each result. None once it has to stop. */
export function trialsPart(trouble: Trouble, widthMm: Mm, measure: Measure): readonly Piece[] {
  const { reckoning, trials } = trouble;
  if (reckoning.stops.length > 0) return [];
  const next = reckoning.trials
    .filter(({ risk }) => risk === undefined)
    .slice(0, PRINTED.trials)
    .flatMap(({ trial: id }) => trials.find((trial) => trial.id === id) ?? []);
  return [
    ...troubleHeading('trials', widthMm, measure),
    ...(reckoning.held
      ? [...paragraph(RISK_WORDS[reckoning.held], TYPES.strong, widthMm, measure), gap(2)]
      : []),
    ...(next.length === 0 ? paragraph(NO_TRIAL, TYPES.body, widthMm, measure) : []),
    ...next.flatMap((trial, at) => trialPieces(trouble, trial, at + 1, widthMm, measure)),
  ];
}

function trialPieces(
  { build }: Trouble,
  trial: Trial,
  number: number,
  widthMm: Mm,
  measure: Measure,
): readonly Piece[] {
  const { title, steps } = trialWordsIn(build, trial);
  const head = `${number}. ${title}`;
  const place = { leftMm: STEP_LEFT, widthMm };
  const strips: readonly Strip[] = [
    ...trialCautions(trial).map((caution) => indented(caution, TYPES.strong, widthMm, measure)),
    ...steps.map((step, at) => indented(`${at + 1}. ${step}`, TYPES.body, widthMm, measure)),
    ...trial.results.map((result) =>
      tickLine(resultName(result), resultWords(result, trial), place, measure),
    ),
  ];
  const heightMm = strips.reduce((sum, strip) => sum + strip.heightMm, 10);
  return [
    // Steps and results of one trial stand on one page: it is read with the hands full.
    { kind: 'keep', heightMm },
    ...paragraph(head, TYPES.heading, widthMm, measure),
    gap(1),
    ...strips.map((strip): Piece => ({ kind: 'strip', strip })),
    gap(4),
  ];
}

function indented(text: string, type: (typeof TYPES)['body'], widthMm: Mm, measure: Measure): Strip {
  const lines = linesOf(text, widthMm - STEP_LEFT, type, measure);
  return {
    heightMm: lines.length * lineHeight(type) + 1,
    draw: ({ x, y }) => linesAt(lines, { x: x + STEP_LEFT, y }, type, measure),
  };
}

/** Every line of the log, with what it ruled out. */
export function logPart(
  { build, lines, reckoning }: Trouble,
  widthMm: Mm,
  measure: Measure,
): readonly Piece[] {
  const columns = [
    { title: 'Line', widthMm: widthMm * 0.07, type: TYPES.pin },
    { title: 'Day', widthMm: widthMm * 0.13, type: TYPES.cell },
    { title: 'Noticed or tried', widthMm: widthMm * 0.34, type: TYPES.cell },
    { title: 'What came of it', widthMm: widthMm * 0.18, type: TYPES.strong },
    { title: 'Ruled out', widthMm: widthMm * 0.28, type: TYPES.cell },
  ];
  const effects = new Map(reckoning.effects.map((effect) => [effect.at, effect]));
  const rows = lines.map((line) => {
    const { what, came } = lineWords(build, line);
    const ruledOut = effects.get(line.at)?.ruledOut ?? [];
    const out = listed(ruledOut.map((cause) => CAUSES[cause]));
    return [String(line.at + 1), line.entry.day ?? '', what, came, out];
  });
  const goesOn = goingOn(`${TROUBLE_TITLES.log}, continued`, widthMm, measure);
  return [
    ...troubleHeading('log', widthMm, measure),
    ...(rows.length === 0
      ? paragraph(NOTHING_LOGGED, TYPES.body, widthMm, measure)
      : tableOf(columns, rows, { leftMm: 0, goesOn }, measure)),
  ];
}
