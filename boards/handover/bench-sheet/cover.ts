import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Measure } from '../../drawing/measure';
import { type Finding, SEVERITIES } from '../../findings/finding';
import { wordsOf } from '../../findings/words';
import { gap, type Piece, type Strip } from '../page/flow';
import type { Drawn } from '../page/page';
import { linesOf } from '../page/paragraph';
import { baseline, lineHeight, linesAt, TYPES, textAt } from '../page/type';
import { paragraph } from '../pinout/connector-section';
import { lyingAdvice, lyingWords } from '../pinout/lying-words';
import { type Counts, countWords, leftWords, NOTHING_LEFT, PART_TITLES } from './bench-words';
import type { BenchOptions } from './options';
import { severitySign } from './severity-sign';

/** How many findings there are of each severity. */
function countsOf(findings: readonly Finding[]): Counts {
  const of = (wanted: Finding['severity']) => findings.filter(({ severity }) => severity === wanted).length;
  return { danger: of('danger'), fault: of('fault'), doubt: of('doubt'), note: of('note') };
}

/** What stands before the parts: the machine, what is left to be put right, how the board lies, the parts. */
export function cover(
  build: Build,
  findings: readonly Finding[],
  options: BenchOptions,
  printedOn: string,
  widthMm: Mm,
  measure: Measure,
): readonly Piece[] {
  const counts = countsOf(findings);
  const said = findings.filter(({ severity }) => severity !== 'note');
  const wrong = counts.danger + counts.fault > 0;
  const facts = `Bench sheet · board ${build.board.name} · case ${build.case.name} · ${printedOn}`;
  return [
    ...paragraph(build.name, TYPES.title, widthMm, measure),
    ...paragraph(facts, TYPES.soft, widthMm, measure),
    gap(3),
    ...(wrong ? [{ kind: 'strip', strip: leftBox(counts, widthMm, measure) } as const, gap(2)] : []),
    ...paragraph(
      `${wrong ? '' : `${NOTHING_LEFT} `}In all: ${countWords(counts)}.`,
      TYPES.body,
      widthMm,
      measure,
    ),
    ...(said.length === 0 ? [] : [gap(1)]),
    ...said.map(
      (finding): Piece => ({ kind: 'strip', strip: findingStrip(finding, build, widthMm, measure) }),
    ),
    gap(3),
    ...paragraph(`${lyingWords(options)}. ${lyingAdvice(options)}`, TYPES.body, widthMm, measure),
    gap(1),
    ...options.parts.map((part): Piece => ({ kind: 'strip', strip: contentStrip(part, measure) })),
    ...(build.notes === undefined || build.notes.trim() === ''
      ? []
      : [gap(2), ...paragraph(build.notes.trim(), TYPES.small, widthMm, measure)]),
    gap(6),
  ];
}

const PAD: Mm = 3.5;
const BOX_SIGN_MM: Mm = 6;

/** The box that nobody can overlook: sign, words and how many. */
function leftBox(counts: Counts, widthMm: Mm, measure: Measure): Strip {
  const { title, line } = leftWords(counts);
  const left = PAD + 2 * BOX_SIGN_MM + PAD;
  const room = widthMm - left - PAD;
  const titles = linesOf(title, room, TYPES.heading, measure);
  const lines = linesOf(line, room, TYPES.body, measure);
  const titlesMm = titles.length * lineHeight(TYPES.heading);
  const textMm = titlesMm + lines.length * lineHeight(TYPES.body);
  const heightMm = Math.max(textMm, 2 * BOX_SIGN_MM) + 2 * PAD;
  return {
    heightMm,
    draw: ({ x, y }) => {
      const top = y + (heightMm - textMm) / 2;
      const centre = { x: x + PAD + BOX_SIGN_MM, y: y + heightMm / 2 };
      const box = { x: x + 0.5, y: y + 0.5, width: widthMm - 1, height: heightMm - 1 };
      return [
        { kind: 'rect', box, paint: { fill: 'faint', stroke: { ink: 'ink', widthMm: 1 } } },
        ...severitySign(counts.danger > 0 ? 'danger' : 'fault', centre, BOX_SIGN_MM, measure),
        ...linesAt(titles, { x: x + left, y: top }, TYPES.heading, measure),
        ...linesAt(lines, { x: x + left, y: top + titlesMm }, TYPES.body, measure),
      ];
    },
  };
}

const SIGN_ROOM_MM: Mm = 7;

/** A finding with its sign and its word, what would happen and why. */
function findingStrip(finding: Finding, build: Build, widthMm: Mm, measure: Measure): Strip {
  const { title, reason } = wordsOf(finding, build);
  const room = widthMm - SIGN_ROOM_MM;
  const word = SEVERITY_WORDS[finding.severity];
  const titles = linesOf(`${word}: ${title}`, room, TYPES.strong, measure);
  const reasons = linesOf(reason, room, TYPES.cell, measure);
  const titlesMm = titles.length * lineHeight(TYPES.strong);
  return {
    heightMm: titlesMm + reasons.length * lineHeight(TYPES.cell) + 1.2,
    draw: ({ x, y }) => [
      ...severitySign(finding.severity, { x: x + 2.6, y: y + 2.3 }, 2.2, measure),
      ...linesAt(titles, { x: x + SIGN_ROOM_MM, y }, TYPES.strong, measure),
      ...linesAt(reasons, { x: x + SIGN_ROOM_MM, y: y + titlesMm }, TYPES.cell, measure),
    ],
  };
}

const SEVERITY_WORDS = Object.fromEntries(
  SEVERITIES.map((severity) => [severity, `${severity[0]?.toUpperCase()}${severity.slice(1)}`]),
) as Readonly<Record<Finding['severity'], string>>;

/** A part and the page on which it begins. */
function contentStrip(part: keyof typeof PART_TITLES, measure: Measure): Strip {
  return {
    heightMm: lineHeight(TYPES.body),
    draw: ({ x, y }, book): readonly Drawn[] => {
      const words = textAt(PART_TITLES[part], { x, y: y + baseline(TYPES.body) }, TYPES.body, measure);
      const page = `page\u00a0${book.pageOf(part) ?? ''}`;
      return [words, textAt(page, { x: x + 62, y: y + baseline(TYPES.body) }, TYPES.small, measure)];
    },
  };
}
