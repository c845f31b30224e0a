import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Measure } from '../../drawing/measure';
import type { ExpectedReading } from '../meter/meter-steps';
import { expectedWords, meterTitle, otherwiseWords, probesWords } from '../meter/meter-words';
import { gap, type Piece, type Strip } from '../page/flow';
import { linesOf } from '../page/paragraph';
import { goingOn } from '../page/table';
import { baseline, lineHeight, linesAt, TYPES, textAt } from '../page/type';
import { paragraph } from '../pinout/connector-section';
import type { BenchStep } from '../steps/bench-steps';
import { METER_HOW, stepWords } from '../steps/step-words';
import { NOTHING_TO_MEASURE, PART_TITLES } from './bench-words';
import { partHeading } from './part-heading';
import { TICK_MM, tickBox } from './tick-box';

type MeterTask = Extract<BenchStep, { kind: 'meter' }>;

const LEFT: Mm = TICK_MM + 3;
const FIELD_MM: Mm = 36;
const FIELD_HIGH_MM: Mm = 8;

/** Every reading to be taken, with what has to be seen, a field to write into, and what else it would mean. */
export function meterPart(
  build: Build,
  tasks: readonly MeterTask[],
  widthMm: Mm,
  measure: Measure,
): readonly Piece[] {
  const goesOn = goingOn(`${PART_TITLES.meter}, continued`, widthMm, measure);
  const head = headStrip(widthMm, measure);
  const again: Strip = {
    heightMm: goesOn.heightMm + head.heightMm,
    draw: (at, book) => [
      ...goesOn.draw(at, book),
      ...head.draw({ x: at.x, y: at.y + goesOn.heightMm }, book),
    ],
  };
  return [
    ...partHeading('meter', widthMm, measure),
    ...(tasks.length === 0
      ? paragraph(NOTHING_TO_MEASURE, TYPES.body, widthMm, measure)
      : [
          ...paragraph(METER_HOW, TYPES.body, widthMm, measure),
          ...cautionsOf(build, tasks).flatMap((each) => paragraph(each, TYPES.strong, widthMm, measure)),
          gap(2),
          { kind: 'strip', strip: head } as const,
        ]),
    ...tasks.flatMap((task): readonly Piece[] => {
      const title = titleStrip(meterTitle(build, task.step), widthMm, measure);
      const readings = task.step.readings.map((reading) => readingStrip(build, reading, widthMm, measure));
      return [
        { kind: 'keep', heightMm: title.heightMm + (readings[0]?.heightMm ?? 0) },
        { kind: 'mark', mark: task.id },
        { kind: 'strip', strip: title, head: again },
        ...readings.map((strip): Piece => ({ kind: 'strip', strip, head: again })),
        gap(2),
      ];
    }),
    gap(4),
  ];
}

/** What to mind at any of the readings, each said once. */
function cautionsOf(build: Build, tasks: readonly MeterTask[]): readonly string[] {
  return [...new Set(tasks.flatMap((task) => stepWords(build, task).cautions))];
}

interface Columns {
  readonly probesMm: Mm;
  readonly expectedMm: Mm;
}

function columnsOf(widthMm: Mm): Columns {
  const rest = widthMm - LEFT - FIELD_MM;
  return { probesMm: rest * 0.58, expectedMm: rest * 0.42 };
}

function headStrip(widthMm: Mm, measure: Measure): Strip {
  const { probesMm, expectedMm } = columnsOf(widthMm);
  const heightMm = lineHeight(TYPES.head) + 1.4;
  return {
    heightMm,
    draw: ({ x, y }) => {
      const down = y + baseline(TYPES.head);
      const at = (words: string, left: Mm) => textAt(words, { x: left, y: down }, TYPES.head, measure);
      const bottom = y + heightMm - 0.4;
      return [
        at('Meter and probes', x + LEFT),
        at('Must show', x + LEFT + probesMm),
        at('Read', x + LEFT + probesMm + expectedMm),
        {
          kind: 'line',
          from: { x, y: bottom },
          to: { x: x + widthMm, y: bottom },
          stroke: { ink: 'ink', widthMm: 0.3 },
        },
      ];
    },
  };
}

function titleStrip(title: string, widthMm: Mm, measure: Measure): Strip {
  const lines = linesOf(title, widthMm - LEFT, TYPES.strong, measure);
  return {
    heightMm: Math.max(TICK_MM, lines.length * lineHeight(TYPES.strong)) + 1.6,
    draw: ({ x, y }) => [
      tickBox({ x, y: y + 0.6 }),
      ...linesAt(lines, { x: x + LEFT, y: y + 0.8 }, TYPES.strong, measure),
    ],
  };
}

function readingStrip(build: Build, reading: ExpectedReading, widthMm: Mm, measure: Measure): Strip {
  const { probesMm, expectedMm } = columnsOf(widthMm);
  const probes = linesOf(probesWords(build, reading), probesMm - 3, TYPES.cell, measure);
  const expected = linesOf(expectedWords(reading), expectedMm - 3, TYPES.strong, measure);
  const room = widthMm - LEFT;
  const otherwise = otherwiseWords(reading).flatMap((words) => linesOf(words, room, TYPES.small, measure));
  const rowMm = Math.max(
    FIELD_HIGH_MM,
    probes.length * lineHeight(TYPES.cell),
    expected.length * lineHeight(TYPES.strong),
  );
  return {
    heightMm: rowMm + otherwise.length * lineHeight(TYPES.small) + 2,
    draw: ({ x, y }) => {
      const field = {
        x: x + LEFT + probesMm + expectedMm,
        y: y + 0.3,
        width: FIELD_MM,
        height: FIELD_HIGH_MM - 0.6,
      };
      return [
        ...linesAt(probes, { x: x + LEFT, y }, TYPES.cell, measure),
        ...linesAt(expected, { x: x + LEFT + probesMm, y }, TYPES.strong, measure),
        { kind: 'rect', box: field, paint: { fill: 'paper', stroke: { ink: 'line', widthMm: 0.25 } } },
        ...linesAt(otherwise, { x: x + LEFT, y: y + rowMm + 0.4 }, TYPES.small, measure),
      ];
    },
  };
}
