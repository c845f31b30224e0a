import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Measure } from '../../drawing/measure';
import { gap, type Piece, type Strip } from '../page/flow';
import { linesOf } from '../page/paragraph';
import { goingOn } from '../page/table';
import { baseline, lineHeight, linesAt, TYPES, textAt } from '../page/type';
import type { BenchStep } from '../steps/bench-steps';
import { standoffPlan } from '../steps/standoff-plan';
import { stepWords } from '../steps/step-words';
import { PART_TITLES } from './bench-words';
import type { BenchPart } from './options';
import { partHeading } from './part-heading';
import { FIGURE_MM, standoffFigure } from './standoff-figure';
import { TICK_MM, tickBox } from './tick-box';

const NUMBER_MM: Mm = 7;
const LEFT: Mm = TICK_MM + 2.5 + NUMBER_MM;
const PAGE_MM: Mm = 32;

/** The list of the steps, in order, each with its box. */
export function stepsPart(
  build: Build,
  steps: readonly BenchStep[],
  parts: readonly BenchPart[],
  widthMm: Mm,
  measure: Measure,
): readonly Piece[] {
  const head = goingOn(`${PART_TITLES.steps}, continued`, widthMm, measure);
  return [
    ...partHeading('steps', widthMm, measure),
    ...steps.map((step, index): Piece => {
      const strip = stepStrip(build, step, index + 1, parts, widthMm, measure);
      return { kind: 'strip', strip, head };
    }),
    gap(5),
  ];
}

function stepStrip(
  build: Build,
  step: BenchStep,
  number: number,
  parts: readonly BenchPart[],
  widthMm: Mm,
  measure: Measure,
): Strip {
  const said = stepWords(build, step);
  // What the meter has to show stands once, where there is room to write beside it.
  const elsewhere = step.kind === 'meter' && parts.includes('meter');
  const plan = step.kind === 'standoffs' ? standoffPlan(build, step.known) : undefined;
  const figure = plan && standoffFigure(plan, measure);
  const room = widthMm - LEFT - (figure ? FIGURE_MM + 4 : PAGE_MM);
  const titles = linesOf(said.title, room, TYPES.strong, measure);
  const text = elsewhere ? [] : [said.lines.join(' ')];
  const lines = text.flatMap((line) => linesOf(line, room, TYPES.cell, measure));
  // What to mind comes before how it is done, as in the window.
  const minded = elsewhere ? [] : said.cautions.flatMap((each) => linesOf(each, room, TYPES.strong, measure));
  const titlesMm = titles.length * lineHeight(TYPES.strong);
  const mindedMm = minded.length * lineHeight(TYPES.strong);
  const textMm = titlesMm + mindedMm + lines.length * lineHeight(TYPES.cell);
  const mark = markOf(step, parts);
  return {
    heightMm: Math.max(TICK_MM, textMm, figure?.heightMm ?? 0) + 2,
    draw: ({ x, y }, book) => {
      const page = mark === undefined ? undefined : book.pageOf(mark);
      const down = y + baseline(TYPES.strong);
      const words = step.kind === 'plug' ? 'drawn on' : 'readings on';
      return [
        tickBox({ x, y }),
        textAt(String(number), { x: x + LEFT - 2.5, y: down }, TYPES.pin, measure, 'end'),
        ...linesAt(titles, { x: x + LEFT, y }, TYPES.strong, measure),
        ...linesAt(minded, { x: x + LEFT, y: y + titlesMm }, TYPES.strong, measure),
        ...linesAt(lines, { x: x + LEFT, y: y + titlesMm + mindedMm }, TYPES.cell, measure),
        ...(figure ? figure.draw({ x: x + widthMm - FIGURE_MM, y }) : []),
        ...(page === undefined
          ? []
          : [textAt(`${words} page\u00a0${page}`, { x: x + widthMm, y: down }, TYPES.small, measure, 'end')]),
      ];
    },
  };
}

/** Where more of a step stands. */
function markOf(step: BenchStep, parts: readonly BenchPart[]): string | undefined {
  if (step.kind === 'plug' && parts.includes('close-ups')) return closeUpMark(step.seated.connector.id);
  if (step.kind === 'meter' && parts.includes('meter')) return step.id;
  return undefined;
}

export function closeUpMark(connector: string): string {
  return `close-up ${connector}`;
}
