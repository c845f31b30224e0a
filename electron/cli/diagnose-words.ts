import { percent } from '../../boards/base/percent';
import { contradictionWords, NONE_LIKELIEST } from '../../boards/diagnosis/words';
import type { DiagnoseReport } from './diagnose-report';
import { type Paint, visible } from './terminal';

/** Suspects, looks and trials that are listed; the report for programs has all of them. */
const LISTED = { suspects: 5, looks: 3, trials: 3, doublesFrom: 0.01 } as const;

/** Suspects and next trials, for people to read; ends with a line break. */
export function diagnoseText(report: DiagnoseReport, paint: Paint): string {
  const { file, name, stop, suspects, doubles, noneOfThese, noneLikeliest, worksNow, heldBack } = report;
  const head = file === null ? 'No file named, a typical build stands in' : visible(file);
  const lines = [
    `${paint(head, 'bold')} (${visible(name)})`,
    ...stop.map((words, at) => `  ${at === 0 ? paint(visible(words), 'red') : visible(words)}`),
    ...contradictionWords(report).map((words) => `  ${words}`),
    ...(report.observed.length + report.notObserved.length === 0
      ? ['  Nothing was noticed yet: these are only how often each is met.']
      : []),
    ...(noneLikeliest ? [`  ${NONE_LIKELIEST}`] : []),
    '',
    ...suspects
      .slice(0, LISTED.suspects)
      .flatMap(({ chance, words, faults }) => [
        `  ${percent(chance)}  ${visible(words)}`,
        ...faults.slice(0, 1).map((fault) => `      above all: ${visible(fault.words)}`),
      ]),
    ...doubles
      .filter(({ chance }) => chance >= LISTED.doublesFrom)
      .map(({ chance, words }) => `  ${percent(chance)}  ${visible(words)}`),
    `  ${percent(noneOfThese)}  none of these`,
    ...(worksNow ? ['', `  ${worksNow.proves}`, `  ${worksNow.provesNot}`] : []),
    ...lookLines(report),
    ...(heldBack && stop.length === 0 ? ['', `  ${paint(heldBack.words, 'red')}`] : []),
    ...trialLines(report),
  ];
  return `${lines.join('\n')}\n`;
}

function lookLines({ look }: DiagnoseReport): readonly string[] {
  if (look.length === 0) return [];
  const asked = look.slice(0, LISTED.looks).map(({ observation, words, gainBits }) => {
    return `    ${visible(words)} (${observation}; ${gainBits.toFixed(2)} bits)`;
  });
  return ['', '  Look first, and say it by “--observe” or “--not”:', ...asked];
}

function trialLines({ stop, next }: DiagnoseReport): readonly string[] {
  if (stop.length > 0) return stoppedLines(next);
  if (next.length === 0) return ['', '  No trial that may be made would tell more.'];
  return next
    .slice(0, LISTED.trials)
    .flatMap(({ trial, words, steps, cautions, results, gainBits, effort }, at) => [
      '',
      `  ${at === 0 ? 'Next' : 'Or'}: ${visible(words)} (${trial}; ${gainBits.toFixed(2)} bits, about ${effort} min)`,
      ...cautions.map((caution) => `    ${caution}`),
      ...steps.map((step, number) => `    ${number + 1}. ${visible(step)}`),
      ...results.map(({ result, chance, words: says }) => `    ${result}, ${percent(chance)}: ${says}`),
    ]);
}

/** Looks that are left when nothing may be started any more. */
function stoppedLines(next: DiagnoseReport['next']): readonly string[] {
  if (next.length === 0) return [];
  const looks = next.slice(0, LISTED.trials).map(({ trial, words }) => `    ${visible(words)} (${trial})`);
  return ['', '  Once all is cold, and with the mains plug pulled, you may look:', ...looks];
}
