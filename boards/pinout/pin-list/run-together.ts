import type { Grid } from '../../document/grid';
import { gridIndex } from '../../document/numbering';
import { cellsOf } from './cells';
import { type LabelStyle, labelsBefore } from './labels';
import type { Line } from './odd-layouts';

/** So many numbers that count on in one line are labels; two of them may be a name with a number in it. */
const RUN = 3;
/** More pins than this stand in no line. */
const MOST_IN_LINE = 64;

/** Commas and semicolons tell pins apart by themselves (row.ts). */
const PUNCTUATED = /[,;]\s*(?:pins?\s*)?\d/i;

/** A line of one cell that begins with a number, and the numbers that stand between its words. */
interface Candidate {
  readonly line: Line;
  readonly first: number;
  readonly inside: readonly { readonly label: number; readonly at: number }[];
}

/**
 * Columns that lost all but one of the spaces between them, as a page is often copied: "1 HDLED+ 2 PLED+"
 * above "3 HDLED- 4 PLED-". The numbers inside are labels where they stand at the same distance from the
 * first in every line and name pins that no line begins with; "1 USB 2 D+" above "3 USB 2 D-" has none.
 */
export function withColumnsApart(lines: readonly Line[], style: LabelStyle, grid: Grid): readonly Line[] {
  const { cellOf } = gridIndex(grid);
  const candidates = lines.flatMap((line) => candidateOf(line, style, cellOf));
  const inside = candidates.filter((each) => each.inside.length > 0);
  const [sample] = inside;
  if (sample === undefined) return lines;
  const firsts = new Set(candidates.map(({ first }) => first));
  const step = sample.inside
    .map(({ label }) => label - sample.first)
    .find((each) => {
      const runs = inside.map((one) => runOf(one, each));
      const labels = runs.flatMap((run) => run.map(({ label }) => label));
      return (
        runs.every((run) => run.length > 0) &&
        (runs.length > 1 || labels.length >= RUN - 1) &&
        new Set(labels).size === labels.length &&
        labels.every((label) => !firsts.has(label))
      );
    });
  if (step === undefined) return lines;
  const apart = new Map(inside.map((one) => [one.line, runOf(one, step)]));
  return lines.map((line) => {
    const cuts = [0, ...(apart.get(line) ?? []).map(({ at }) => at)];
    return { ...line, text: cuts.map((from, k) => line.text.slice(from, cuts[k + 1]).trim()).join('\t') };
  });
}

function candidateOf(
  line: Line,
  style: LabelStyle,
  cellOf: ReturnType<typeof gridIndex>['cellOf'],
): readonly Candidate[] {
  if (cellsOf(line.text).length !== 1 || PUNCTUATED.test(line.text)) return [];
  const read = labelsBefore(line.text, style);
  const [label, ...more] = read?.labels ?? [];
  if (read === undefined || label === undefined || more.length > 0 || !/^\d+$/.test(label)) return [];
  const from = line.text.length - read.rest.length;
  const inside = [...read.rest.matchAll(/(?<=\S\s+)(?:pin\s*)?(\d{1,4})(?=\s*[.:)=-]?\s+\S)/gi)]
    .slice(0, MOST_IN_LINE)
    .flatMap(({ index, 1: number = '' }) =>
      cellOf(number) === undefined ? [] : [{ label: Number(number), at: from + index }],
    );
  return [{ line, first: Number(label), inside }];
}

/** The numbers of a line that stand a step, two steps and so on from the first, in that order. */
function runOf({ first, inside }: Candidate, step: number): Candidate['inside'] {
  const run: Candidate['inside'][number][] = [];
  for (const one of inside) if (one.label === first + (run.length + 1) * step) run.push(one);
  return step === 0 ? [] : run;
}
