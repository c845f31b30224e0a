import { ok, type Result, refuse } from '../../base/result';
import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Measure } from '../../drawing/measure';
import { findingsOf } from '../../findings/findings';
import { hasCables } from '../cables/cable-list';
import { type Book, flow, gap, type Piece } from '../page/flow';
import { bodyOf, footOf } from '../page/foot';
import { type Letters, NO_SHAPE_WORDS } from '../page/letters';
import type { Drawn, Page, Paper } from '../page/page';
import { MOST_PAGES, PAPERS } from '../page/paper';
import { TYPES } from '../page/type';
import type { PaperProblem } from '../paper-problem';
import { paragraph } from '../pinout/connector-section';
import { lyingWords } from '../pinout/lying-words';
import { type BenchStep, benchStepsOf } from '../steps/bench-steps';
import { PART_TITLES } from './bench-words';
import { cablesPart } from './cables-part';
import { closeUpsPart } from './close-ups-part';
import { cover } from './cover';
import { listPart } from './list-part';
import { meterPart } from './meter-part';
import { BENCH_PARTS, type BenchOptions, type BenchPart } from './options';
import { printableBuild } from './printable-build';
import { stepsPart } from './steps-part';

/**
 * The bench sheet of a build: what is left to be put right, the work in order, every header with its plugs,
 * what the meter has to show, and every wire. Pure: the same build, options and date give the same pages.
 *
 * @param printedOn the day as it is printed; there is no clock in here
 */
export function benchPaper(
  build: Build,
  options: BenchOptions,
  printedOn: string,
  letters: Letters,
): Result<Paper, PaperProblem> {
  const { build: shown, replaced } = printableBuild(build, letters);
  const { measure } = letters;
  const size = PAPERS[options.paper];
  const foot = footOf(size, { name: shown.name, what: lyingWords(options) }, printedOn, measure);
  const room = bodyOf(size, foot, 0);
  const parts = BENCH_PARTS.filter(
    (part) => options.parts.includes(part) && (part !== 'cables' || wantsCables(build, options)),
  );
  const pieces: readonly Piece[] = [
    ...cover(shown, findingsOf(shown), { ...options, parts }, printedOn, room.width, measure),
    ...(replaced ? [...paragraph(NO_SHAPE_WORDS, TYPES.small, room.width, measure), gap(4)] : []),
    ...partsOf(shown, { ...options, parts }, { widthMm: room.width, heightMm: room.height }, measure),
  ];
  const { pages, marks } = flow(pieces, () => room);
  if (pages.length > MOST_PAGES)
    return refuse({ code: 'too-many-pages', pages: pages.length, limit: MOST_PAGES });
  const book: Book = { pages: pages.length, pageOf: (mark) => marks.get(mark) };
  const title = `${build.name}: bench sheet`;
  return ok({
    title,
    size,
    contents: parts.map((part) => ({ title: PART_TITLES[part], page: marks.get(part) ?? 1 })),
    pages: pages.map((placed, index): Page => {
      const items: readonly Drawn[] = [
        ...placed.flatMap(({ strip, at }) => strip.draw(at, book)),
        ...foot.draw(index + 1, pages.length),
      ];
      return { words: `${title}, page ${index + 1} of ${pages.length}`, items };
    }),
  });
}

function partsOf(
  build: Build,
  options: BenchOptions,
  room: { readonly widthMm: Mm; readonly heightMm: Mm },
  measure: Measure,
): readonly Piece[] {
  const { widthMm } = room;
  const needsSteps = options.parts.some((part) => part !== 'list' && part !== 'cables');
  const steps = needsSteps ? stepsOf(build) : [];
  const plugs = steps.flatMap((step) => (step.kind === 'plug' ? [step.seated] : []));
  const tasks = steps.filter((step) => step.kind === 'meter');
  const pieces: Readonly<Record<BenchPart, () => readonly Piece[]>> = {
    steps: () => stepsPart(build, steps, options.parts, widthMm, measure),
    'close-ups': () => closeUpsPart(build, plugs, options, room, measure),
    meter: () => meterPart(build, tasks, widthMm, measure),
    list: () => listPart(build, widthMm, measure),
    cables: () => cablesPart(build, widthMm, measure),
  };
  return options.parts.flatMap((part) => pieces[part]());
}

/** A machine of which no cable is measured has no page of cables, unless that is all that is asked for. */
function wantsCables(build: Build, { parts }: BenchOptions): boolean {
  return hasCables(build) || parts.length === 1;
}

/** Nothing waits in a ring: chores come before plugs, inner plugs before outer ones, meters after both. */
function stepsOf(build: Build): readonly BenchStep[] {
  const steps = benchStepsOf(build);
  if (steps.ok) return steps.value;
  throw new Error(`These steps wait for each other: ${steps.problem.ids.join(', ')}`);
}
