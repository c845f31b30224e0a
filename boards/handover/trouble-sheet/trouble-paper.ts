import { byIdentity } from '../../base/by-identity';
import { ok, type Result, refuse } from '../../base/result';
import type { Mm } from '../../base/units';
import { dictionaryOf } from '../../diagnosis/dictionary';
import { faultsAsWritten } from '../../diagnosis/faults/as-written';
import { readLog } from '../../diagnosis/log/read-log';
import { reckon } from '../../diagnosis/log/reckoning';
import { withPairs } from '../../diagnosis/pairs';
import { trialsOf } from '../../diagnosis/trials/trials';
import { RISK_WORDS, stopWords, WORKS_NOW } from '../../diagnosis/trials/words';
import { contradictionWords, NONE_LIKELIEST } from '../../diagnosis/words';
import type { Build } from '../../document/build';
import { logOf } from '../../document/trouble';
import type { Measure } from '../../drawing/measure';
import { DANGER_TITLE } from '../bench-sheet/bench-words';
import { printableBuild } from '../bench-sheet/printable-build';
import { type Book, flow, gap, type Piece } from '../page/flow';
import { bodyOf, footOf } from '../page/foot';
import { type Letters, NO_SHAPE_WORDS, printable } from '../page/letters';
import type { Page, Paper } from '../page/page';
import { MOST_PAGES, PAPERS } from '../page/paper';
import { TYPES } from '../page/type';
import type { PaperProblem } from '../paper-problem';
import { paragraph } from '../pinout/connector-section';
import type { TroubleOptions } from './options';
import { stopBox } from './stop-box';
import { logPart, looksPart, suspectsPart, type Trouble, trialsPart } from './trouble-parts';
import { STOPPED_TITLE, TROUBLE_PARTS, TROUBLE_TITLES } from './trouble-words';

/**
 * What was noticed and tried on a machine that does not start, what it may be, and what to do next. Pure: the
 * same build and date give the same pages.
 *
 * @param printedOn the day as it is printed; there is no clock in here
 */
export function troublePaper(
  build: Build,
  options: TroubleOptions,
  printedOn: string,
  letters: Letters,
): Result<Paper, PaperProblem> {
  const { trouble, replaced } = troubleOf({ build, letters });
  const { measure } = letters;
  const size = PAPERS[options.paper];
  const foot = footOf(size, { name: trouble.build.name, what: 'Trouble sheet' }, printedOn, measure);
  const room = bodyOf(size, foot, 0);
  const widthMm = room.width;
  const pieces: readonly Piece[] = [
    ...coverOf(trouble, printedOn, widthMm, measure),
    ...(replaced ? [...paragraph(NO_SHAPE_WORDS, TYPES.small, widthMm, measure), gap(4)] : []),
    ...suspectsPart(trouble, widthMm, measure),
    ...looksPart(trouble, widthMm, measure),
    ...trialsPart(trouble, widthMm, measure),
    ...logPart(trouble, widthMm, measure),
  ];
  const { pages, marks } = flow(pieces, () => room);
  if (pages.length > MOST_PAGES)
    return refuse({ code: 'too-many-pages', pages: pages.length, limit: MOST_PAGES });
  const book: Book = { pages: pages.length, pageOf: (mark) => marks.get(mark) };
  const title = `${build.name}: trouble sheet`;
  return ok({
    title,
    size,
    contents: TROUBLE_PARTS.flatMap((part) => {
      const page = marks.get(part);
      return page === undefined ? [] : [{ title: TROUBLE_TITLES[part], page }];
    }),
    pages: pages.map((placed, index): Page => {
      const items = [
        ...placed.flatMap(({ strip, at }) => strip.draw(at, book)),
        ...foot.draw(index + 1, pages.length),
      ];
      return { words: `${title}, page ${index + 1} of ${pages.length}`, items };
    }),
  });
}

/** What is printed of a build, and in which letters. */
interface Asked {
  readonly build: Build;
  readonly letters: Letters;
}

/** The trouble of a build with every text as it can be printed. Kept, since its pages are asked for one by one. */
const troubleOf = byIdentity(
  ({ build, letters }: Asked): { readonly trouble: Trouble; readonly replaced: boolean } => {
    const shown = printableBuild(build, letters);
    let { replaced } = shown;
    const log = logOf(build).map((line) => {
      if (line.kind !== 'remark') return line;
      const text = printable(line.text, letters);
      if (text !== line.text.normalize('NFC')) replaced = true;
      return { ...line, text };
    });
    const trials = trialsOf(shown.build);
    const reckoning = reckon(dictionaryOf(faultsAsWritten(shown.build)), log, trials, withPairs);
    return { trouble: { build: shown.build, lines: readLog(log, trials), trials, reckoning }, replaced };
  },
  ({ build, letters }) => [build, letters],
);

/** The machine, and what has to be known before anything else: a stop, or what it proves that it works now. */
function coverOf(
  { build, lines, reckoning }: Trouble,
  printedOn: string,
  widthMm: Mm,
  measure: Measure,
): readonly Piece[] {
  const { stops, held, worksNow, noneLikeliest } = reckoning;
  const box = (title: string, words: readonly string[]): readonly Piece[] => [
    { kind: 'strip', strip: stopBox(title, words, widthMm, measure) },
    gap(3),
  ];
  const facts = `Trouble sheet · board ${build.board.name} · case ${build.case.name} · ${printedOn}`;
  const said = lines.filter(({ counts }) => counts).length;
  const count = `${said}\u00a0${said === 1 ? 'line' : 'lines'} of the log count${said === 1 ? 's' : ''}.`;
  return [
    ...paragraph(build.name, TYPES.title, widthMm, measure),
    ...paragraph(facts, TYPES.soft, widthMm, measure),
    gap(3),
    ...(stops.length > 0 ? box(STOPPED_TITLE, stopWords(stops)) : []),
    ...(held === 'danger' ? box(DANGER_TITLE, [RISK_WORDS.danger]) : []),
    ...(worksNow
      ? [
          ...paragraph(WORKS_NOW.proves, TYPES.strong, widthMm, measure),
          ...paragraph(WORKS_NOW.provesNot, TYPES.body, widthMm, measure),
          gap(2),
        ]
      : []),
    ...[...(noneLikeliest ? [NONE_LIKELIEST] : []), ...contradictionWords(reckoning)].flatMap((words) => [
      ...paragraph(words, TYPES.strong, widthMm, measure),
      gap(2),
    ]),
    ...paragraph(count, TYPES.body, widthMm, measure),
    gap(4),
  ];
}
