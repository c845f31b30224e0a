import type { Grid } from '../../document/grid';
import { gridIndex } from '../../document/numbering';
import { cellsOf, isRule, listedCells } from './cells';
import { keyOf, piecesOf, plainText } from './clean';
import { headOf } from './header-words';
import type { LabelStyle } from './labels';
import { type Line, labelsLast, oddLayout } from './odd-layouts';
import { type Entry, entriesOf } from './row';
import { withColumnsApart } from './run-together';
import { type Head, headIn } from './under-head';
import { entryOf } from './word-index';

/** A text taken apart: the words with the labels they stand at, headings, and lines that nothing was made of. */
export interface Layout {
  readonly entries: readonly Entry[];
  /** Lines before the first entry. */
  readonly headings: readonly string[];
  readonly leftOver: readonly { readonly line: number; readonly text: string }[];
  /** Whether the text names labels, or the words were counted off. */
  readonly counted: boolean;
}

/** How a text lays out its list: with labels in any of the usual ways, or as bare words in counting order. */
export function layoutOf(text: string, grid: Grid): Layout {
  const told = withoutPrefix(linesOf(text));
  const style = styleOf(told, grid);
  const lines = withColumnsApart(told, style, grid);
  const apart = oddLayout(lines, style);
  if (apart) return { entries: apart, headings: [], leftOver: [], counted: false };
  const labelled = withLabels(lines, style);
  if (labelled.entries.length > 0) return labelled;
  const last = labelsLast(lines, style, grid);
  return last ? { ...labelled, headings: [], entries: last } : withoutLabels(lines, grid);
}

function linesOf(text: string): readonly Line[] {
  return plainText(text)
    .split(/\r\n|\n|\r/)
    .map((each, at): Line => ({ line: at + 1, text: each.trimEnd() }))
    .filter((each) => each.text.trim() !== '' && !isRule(each.text));
}

/** A name with a number behind it; "pin" and its like are read with the labels themselves. */
const PREFIX =
  /^\s*(?!(?:p[il1]ns?|contacts?|terminals?|pos|positions?|no|nr)\b)([a-z]\w{1,15})[-.#:\s]\s*(?=\d{1,3}\b)/i;

/** The name of a header before every number: "J5-1: VCC". What most lines begin with is no part of a label. */
function withoutPrefix(lines: readonly Line[]): readonly Line[] {
  const prefixes = lines.map(({ text }) => PREFIX.exec(text));
  const counts = new Map<string, number>();
  for (const prefix of prefixes) {
    const name = prefix?.[1]?.toUpperCase();
    if (name !== undefined) counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  const [name, most] = [...counts].toSorted((a, b) => b[1] - a[1])[0] ?? ['', 0];
  if (most < 3 || most < 0.6 * lines.length || entryOf(keyOf(piecesOf(name)))) return lines;
  return lines.map((line, at) => {
    const prefix = prefixes[at];
    return prefix?.[1]?.toUpperCase() === name ? { ...line, text: line.text.slice(prefix[0].length) } : line;
  });
}

function styleOf(lines: readonly Line[], grid: Grid): LabelStyle {
  const labels = grid.numbering.scheme === 'free' ? gridIndex(grid).positions.map(({ label }) => label) : [];
  const own = new Map([
    ...labels.map((label) => [label.toUpperCase(), label] as const),
    ...labels.map((label) => [label, label] as const),
  ]);
  const begins = (pattern: RegExp) => lines.filter((each) => pattern.test(each.text)).length;
  const numbered = begins(/^[\s|([#]*(?:pins?\s*)?[#]?\d/i);
  const lettered = begins(/^[\s|([]*(?:pins?\s*)?[A-Z]{1,2}\d{1,2}\s*[\s:.)|=-]\s*\S/i);
  return { own, lettered: numbered === 0 && lettered >= 2 && lettered >= lines.length * 0.6 };
}

/** "9 pin USB header": how many pins a header has, and not what pin 9 is. */
const PIN_COUNT =
  /^\s*\d+[\s-]*(?:pins?|ways?|poles?|positions?)\b.*\b(?:headers?|connectors?|sockets?|plugs?|panels?|pinouts?)\s*[:.]?$/i;

/** Every position of the largest connector, four times over: what comes after that is left over. */
const MOST_TOLD = 16_384;

function withLabels(lines: readonly Line[], style: LabelStyle): Layout {
  const entries: Entry[] = [];
  const headings: string[] = [];
  const leftOver: Line[] = [];
  let head: Head | undefined;
  let told = 0;
  for (const { line, text } of lines) {
    if (told > MOST_TOLD) {
      leftOver.push({ line, text: text.trim() });
      continue;
    }
    const here = headIn(text);
    const read = here || PIN_COUNT.test(text) ? [] : entriesOf(text, line, style, head);
    if (here) head = here;
    else if (read.length > 0)
      for (const entry of read) {
        entries.push(entry);
        told += entry.labels.length;
      }
    else if (entries.length === 0) headings.push(text.trim());
    else leftOver.push({ line, text: text.trim() });
  }
  return { entries, headings, leftOver, counted: false };
}

/**
 * Bare words, in counting order. Lines with as many words as the connector has columns, and as many lines as
 * rows, are a drawing of it. The first lines are a heading where there are as many lines too many.
 */
function withoutLabels(lines: readonly Line[], grid: Grid): Layout {
  const { positions, labelAt } = gridIndex(grid);
  const told = lines.filter(({ text }) => headOf(cellsOf(text)) === undefined);
  const only = told.length === 1 ? told[0] : undefined;
  const inOne = only ? listedCells(only.text) : [];
  const rows =
    only && inOne.length > 1
      ? [{ line: only.line, cells: inOne }]
      : told.map(({ line, text }) => ({ line, cells: cellsOf(text) }));
  const widest = Math.max(0, ...rows.map(({ cells }) => cells.length));
  const cells = rows.filter((row) => widest === 1 || row.cells.length > 1);
  const headings = rows.filter((row) => !cells.includes(row)).map((row) => row.cells.join(' '));
  const drawn = widest > 1 && cells.length === grid.rows && widest === grid.cols;
  const words = cells.flatMap(({ line, cells: row }, r) =>
    row.map((word, c) => ({ line, word, label: drawn ? labelAt([r, c]) : undefined })),
  );
  const extra =
    widest === 1 && words.length > positions.length ? titleLines(words.map(({ word }) => word)) : 0;
  const entries = words.slice(extra).flatMap(({ line, word, label }, at): readonly Entry[] => {
    const found = label ?? positions[at]?.label ?? String(at + 1);
    return [{ line, labels: [found], word, more: '' }];
  });
  return {
    entries,
    headings: [...headings, ...words.slice(0, extra).map(({ word }) => word)],
    leftOver: [],
    counted: true,
  };
}

/** How many of the first lines are a title: those that end with a colon or name a header. */
function titleLines(words: readonly string[]): number {
  return Math.max(
    0,
    words.findIndex((word) => !/:$|\b(?:header|connector|pinout|pin\s?out)\b/i.test(word)),
  );
}
