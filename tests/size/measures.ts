/** One thing that is measured, and what it may come to at most. */
export interface Measure {
  readonly name: string;
  readonly most: number;
  readonly unit: 'ms' | 'MB' | 'times';
}

/** What was measured, by name, in each run. */
export type Figures<Name extends string> = Readonly<Record<Name, number>>;

/**
 * A line for each measure that was over what it may come to in every run: on a machine that is busy with other
 * things the least of several is nearest to what the program itself takes.
 */
export function overTarget<Name extends string>(
  measures: Readonly<Record<Name, Measure>>,
  runs: readonly Figures<Name>[],
  beside: string,
): readonly string[] {
  return named(measures).flatMap(([key, { name, most, unit }]) => {
    const least = Math.min(...runs.map((run) => run[key]));
    // Not "more than": what could not be measured is no number, and has not been held.
    if (least <= most) return [];
    return [
      `${name}: ${figure(least)} ${unit} at best of ${runs.length}, ${most} ${unit} at most (${beside})`,
    ];
  });
}

/** The measures as they came, one a line: best, median, and what each may come to. */
export function told<Name extends string>(
  measures: Readonly<Record<Name, Measure>>,
  runs: readonly Figures<Name>[],
): string {
  const lines = named(measures).map(([key, { name, most, unit }]) => {
    const sorted = runs.map((run) => run[key]).sort((a, b) => a - b);
    const middle = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
    const [least = Number.NaN] = sorted;
    return `  ${name.padEnd(44)} best ${figure(least).padStart(7)}, median ${figure(middle).padStart(7)} ${unit}; at most ${most}`;
  });
  return `${lines.join('\n')}\n`;
}

function named<Name extends string>(measures: Readonly<Record<Name, Measure>>) {
  return Object.entries(measures) as [Name, Measure][];
}

function figure(value: number): string {
  return value.toFixed(value < 10 ? 2 : 0);
}
