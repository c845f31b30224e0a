import type { Grid } from '../../document/grid';
import { gridIndex } from '../../document/numbering';
import { cellsOf } from './cells';
import { headOf } from './header-words';
import { type LabelStyle, onlyLabels } from './labels';
import type { Entry } from './row';

/** A line of the text, from 1, that is not empty. */
export interface Line {
  readonly line: number;
  readonly text: string;
}

/** Layouts in which labels and words have lines of their own; undefined where the text is none of them. */
export function oddLayout(lines: readonly Line[], style: LabelStyle): readonly Entry[] | undefined {
  return labelsApart(lines, style) ?? labelsInRows(lines, style);
}

/** Labels and words on lines of their own, by turns or all labels first: as a table is copied cell by cell. */
function labelsApart(lines: readonly Line[], style: LabelStyle): readonly Entry[] | undefined {
  const told = lines.filter(({ text }) => headOf([text]) === undefined);
  const read = told.map((each) => ({ ...each, labels: onlyLabels(each.text, style) }));
  const from = read.findIndex(({ labels }) => labels !== undefined);
  const rest = from < 0 ? [] : read.slice(from);
  const half = rest.length / 2;
  if (rest.length < 2 || rest.filter(({ labels }) => labels).length !== half) return undefined;
  const byTurns = rest.every(({ labels }, at) => (labels !== undefined) === (at % 2 === 0));
  const allFirst = rest.every(({ labels }, at) => (labels !== undefined) === at < half);
  if (!byTurns && !allFirst) return undefined;
  return Array.from({ length: half }, (_, at): Entry => {
    const label = rest[byTurns ? 2 * at : at];
    const word = rest[byTurns ? 2 * at + 1 : half + at];
    return {
      line: word?.line ?? 0,
      labels: label?.labels ?? [],
      word: word?.text.trim() ?? '',
      more: '',
    };
  });
}

/** A drawing of the header: a line of labels, and above or below it a line with as many words. */
function labelsInRows(lines: readonly Line[], style: LabelStyle): readonly Entry[] | undefined {
  const rows = lines.map(({ line, text }) => {
    const cells = text
      .trim()
      .split(/[\s|]+/)
      .filter((cell) => cell !== '');
    const labels = cells.map((cell) => onlyLabels(cell, style)?.[0]);
    const all = cells.length > 1 && labels.every((label) => label !== undefined);
    return {
      line,
      labels: all ? labels.flatMap((label) => label ?? []) : undefined,
      words: wordsOf(text, cells),
    };
  });
  const taken = new Set<number>();
  const entries = rows.flatMap(({ labels }, at): readonly Entry[] => {
    if (labels === undefined) return [];
    const partner = [at + 1, at - 1].find((near) => {
      const row = rows[near];
      return row && row.labels === undefined && !taken.has(near) && row.words(labels.length) !== undefined;
    });
    const row = partner === undefined ? undefined : rows[partner];
    if (partner === undefined || row === undefined) return [];
    taken.add(partner);
    const words = row.words(labels.length) ?? [];
    return labels.map((label, place) => ({
      line: row.line,
      labels: [label],
      word: words[place] ?? '',
      more: '',
    }));
  });
  const drawn = rows.filter(({ labels }) => labels !== undefined).length;
  return drawn > 0 && taken.size === drawn ? entries : undefined;
}

/** The words of a line where there are as many as wanted, between wide spaces or between any. */
function wordsOf(text: string, cells: readonly string[]) {
  return (count: number): readonly string[] | undefined =>
    [cellsOf(text), cells].find((words) => words.length === count);
}

/** "PLED+ .... 1": every line ends with a label of the connector, each with another one. */
export function labelsLast(
  lines: readonly Line[],
  { own }: LabelStyle,
  grid: Grid,
): readonly Entry[] | undefined {
  const { cellOf } = gridIndex(grid);
  const entries = lines.flatMap(({ line, text }): readonly Entry[] => {
    const [, word, label = ''] = /^\s*(\S.{0,80}?)[\s.:_]*[\s.]([A-Za-z]{0,2}\d{1,4})\s*$/.exec(text) ?? [];
    const known = own.get(label) ?? own.get(label.toUpperCase()) ?? label;
    return word !== undefined && cellOf(known) ? [{ line, labels: [known], word, more: '' }] : [];
  });
  const labels = new Set(entries.map((entry) => entry.labels[0]));
  const others = lines.length - entries.length;
  return entries.length > 2 && others <= 1 && labels.size === entries.length ? entries : undefined;
}
