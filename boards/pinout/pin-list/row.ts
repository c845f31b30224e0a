import { cellsOf } from './cells';
import { type LabelStyle, labelsBefore, labelsBehind, onlyLabels } from './labels';
import { type Head, underHead } from './under-head';

/** A word of the list with the labels of its pins, where it has any. */
export interface Entry {
  /** From 1, as the person counts the lines of the text. */
  readonly line: number;
  readonly labels: readonly string[];
  readonly word: string;
  /** What else is said of it: a column of explanations. */
  readonly more: string;
}

/** More pins than this stand in no line. */
const MOST_PARTS = 4_096;

/** The entries of one line that has labels in it; none where it has none. */
export function entriesOf(
  text: string,
  line: number,
  style: LabelStyle,
  head: Head | undefined,
): readonly Entry[] {
  const entry = (labels: readonly string[], word: string, more = ''): Entry => ({ line, labels, word, more });
  const cells = cellsOf(text);
  const told = head && cells.length > 1 ? underHead(text, style, head) : undefined;
  const inTable = told
    ? told.map(({ labels, word, more }) => entry(labels, word, more))
    : cells.length > 1
      ? fromCells(cells, style, entry)
      : [];
  if (inTable.length > 0) return inTable;
  const separate = text.split(/[;,]\s*(?=\D{0,12}[A-Za-z]?\d)/, MOST_PARTS).map((part) => part.trim());
  const several = separate.length > 1 ? inline(separate, style, entry) : [];
  if (several.length > 1) return signed(several, text);
  const marked = text.trim().split(/\s+(?=(?:pin\s*)?\d{1,3}\s*[:=)]\s*\S)/i, MOST_PARTS);
  const run = marked.map((part) => labelsBefore(part, style));
  if (run.length > 1 && marked.every((part) => MARKED_RUN.test(part)) && run.every((each) => each?.rest))
    return run.flatMap((each) => (each ? [entry(each.labels, each.rest)] : []));
  const before = labelsBefore(text, style);
  if (before) return [entry(before.labels, before.rest)];
  const behind = labelsBehind(text, style);
  return behind ? [entry(behind.labels, behind.rest)] : several;
}

type Make = (labels: readonly string[], word: string, more?: string) => Entry;

/** "1 DCD, 2 RXD, 3 TXD"; a heading before the first label is left away: "COM: 1 DCD". */
function inline(parts: readonly string[], style: LabelStyle, entry: Make): readonly Entry[] {
  const entries: Entry[] = [];
  let waiting: readonly string[] = [];
  for (const [at, part] of parts.entries()) {
    const read = labelsBefore(at === 0 ? afterHeading(part, style) : part, style);
    if (read === undefined) {
      const last = entries.at(-1);
      if (last === undefined) return [];
      entries[entries.length - 1] = { ...last, word: `${last.word}, ${part}` };
    } else if (read.rest === '') waiting = [...waiting, ...read.labels];
    else {
      entries.push(entry([...waiting, ...read.labels], read.rest));
      waiting = [];
    }
  }
  return waiting.length > 0 ? [...entries, entry(waiting, '')] : entries;
}

/** "1:VCC 2:D- 3:D+": each number is marked by what stands behind it. */
const MARKED_RUN = /^(?:pin\s*)?\d{1,3}\s*[:=)]/i;

/** "Power LED: pin 2 (+), pin 4 (-)": signs alone belong to what stands before the colon. */
function signed(entries: readonly Entry[], text: string): readonly Entry[] {
  const heading = text.slice(0, Math.max(0, text.indexOf(':'))).trim();
  if (heading === '' || !entries.every(({ word }) => ONLY_SIGN.test(word))) return entries;
  return entries.map((each) => ({ ...each, word: `${heading} ${each.word}` }));
}

const ONLY_SIGN = /^[([]?\s*(?:[+-]|anode|cathode|positive|negative|plus|minus|pos|neg)\s*[)\]]?$/i;

/** The text from the first label on: "CPU fan header: pin 1 - Ground" begins at "pin 1". */
function afterHeading(text: string, style: LabelStyle): string {
  if (labelsBefore(text, style)) return text;
  const colon = text.indexOf(':');
  return colon < 0 ? text : text.slice(colon + 1).trim();
}

function fromCells(cells: readonly string[], style: LabelStyle, entry: Make): readonly Entry[] {
  const kinds = cells
    .flatMap((cell) => split(cell, style))
    .map((cell) => ({
      cell,
      labels: onlyLabels(cell, style),
      both: labelsBefore(cell, style),
    }));
  const filled = kinds.filter(({ cell }) => cell !== '');
  // "Pin1: PWR LED    Pin2: SPEAKER": every cell holds its own label.
  if (filled.length > 0 && filled.every(({ both, labels }) => both && !labels))
    return filled.flatMap(({ both }) => (both ? [entry(both.labels, both.rest)] : []));
  const groups = grouped(kinds);
  return groups.flatMap(({ labels, words }) => {
    const [word = '', ...more] = words;
    return [entry(labels, word, more.join(' '))];
  });
}

/** A label that shares its cell with a word, in two cells: "Pin 10: NC" between others. */
function split(cell: string, style: LabelStyle): readonly string[] {
  const read = MARKED.test(cell) ? labelsBefore(cell, style) : undefined;
  return read && read.rest !== '' ? [cell.slice(0, cell.length - read.rest.length), read.rest] : [cell];
}

/** A number that is marked as a label: by a word before it or a sign behind it. */
const MARKED = /^\s*(?:pins?|contacts?|no\.?|#)\s*#?\s*[A-Z]?\d|^\s*[([]?[A-Z]?\d{1,4}\s*[:.)\]=](?!\d)/i;

interface Kind {
  readonly cell: string;
  readonly labels: readonly string[] | undefined;
  readonly both: { readonly labels: readonly string[]; readonly rest: string } | undefined;
}

/** Labels with the words that belong to them: behind each, or before it where the line begins with a word. */
function grouped(kinds: readonly Kind[]): readonly { labels: readonly string[]; words: readonly string[] }[] {
  const at = kinds.flatMap(({ labels }, place) => (labels ? [place] : []));
  const [first] = at;
  if (first === undefined) {
    // "1 PLED+    description": the label shares the first cell with its word.
    const [head, ...more] = kinds;
    return head?.both
      ? [{ labels: head.both.labels, words: [head.both.rest, ...more.map(({ cell }) => cell)] }]
      : [];
  }
  const words = (from: number, to: number) => kinds.slice(from, to).map(({ cell }) => cell);
  const labelsAt = (place: number) => kinds[place]?.labels ?? [];
  const last = at.at(-1) ?? first;
  const [, second] = at;
  if (first > 0 && words(0, first).some((cell) => cell !== '')) {
    // "VBUS | 1 | 19 | VBUS": the first word stands before its label, the last one behind it.
    if (at.length === 2 && second === first + 1 && last < kinds.length - 1)
      return [
        { labels: labelsAt(first), words: words(0, first) },
        { labels: labelsAt(second), words: words(second + 1, kinds.length) },
      ];
    return at.map((place, order) => ({
      labels: labelsAt(place),
      words: words(order === 0 ? 0 : (at[order - 1] ?? 0) + 1, place),
    }));
  }
  // "1 | 2 | PWR LED | SPEAKER": all labels before all words.
  if (at.length > 1 && last - first === at.length - 1 && kinds.length - last - 1 === at.length)
    return at.map((place, order) => ({
      labels: labelsAt(place),
      words: words(last + 1 + order, last + 2 + order),
    }));
  return at.map((place, order) => ({
    labels: labelsAt(place),
    words: words(place + 1, at[order + 1] ?? kinds.length),
  }));
}
