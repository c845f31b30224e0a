import type { LayoutPin } from './known-layouts';

/** A manner of writing a list down. */
export interface Manner {
  readonly name: string;
  readonly write: (pins: readonly LayoutPin[]) => string;
}

const lines = (pins: readonly LayoutPin[], line: (label: string, word: string) => string) =>
  pins.map(([label, , word]) => line(label, word)).join('\n');

/** Two pins a line: the odd ones on the left, the even ones on the right. */
function byTwos(pins: readonly LayoutPin[], line: (cells: readonly string[]) => string): string {
  return pins
    .flatMap((left, at) => (at % 2 === 0 ? [[left, pins[at + 1]]] : []))
    .map((pair) => line(pair.flatMap((pin) => (pin ? [pin[0], pin[2]] : []))))
    .join('\n');
}

/** The same word once, with all of its pins before it. */
function together(pins: readonly LayoutPin[]): string {
  const byWord = new Map<string, string[]>();
  for (const [label, , word] of pins) byWord.set(word, [...(byWord.get(word) ?? []), label]);
  return [...byWord]
    .map(([word, labels]) => `${labels.length > 1 ? 'Pins' : 'Pin'} ${labels.join(', ')}: ${word}`)
    .join('\n');
}

/** Ways in which manuals and pages write the same list. */
export const MANNERS: readonly Manner[] = [
  { name: 'a number and a space', write: (pins) => lines(pins, (label, word) => `${label} ${word}`) },
  { name: '"Pin" and a colon', write: (pins) => lines(pins, (label, word) => `Pin ${label}: ${word}`) },
  { name: 'a bracket', write: (pins) => lines(pins, (label, word) => `${label}) ${word}`) },
  { name: 'a full stop', write: (pins) => lines(pins, (label, word) => `  ${label}. ${word}`) },
  { name: 'a dash', write: (pins) => lines(pins, (label, word) => `${label} – ${word}`) },
  {
    name: 'an equals sign, in small letters',
    write: (pins) => lines(pins, (label, word) => `${label} = ${word.toLowerCase()}`),
  },
  {
    name: 'a tab under a head',
    write: (pins) => `Pin\tSignal\n${lines(pins, (label, word) => `${label}\t${word}`)}`,
  },
  {
    name: 'a markdown table',
    write: (pins) =>
      `| Pin | Signal |\n|----:|:------|\n${lines(pins, (label, word) => `| ${label} | ${word.replaceAll('|', '/')} |`)}`,
  },
  {
    name: 'four columns between tabs',
    write: (pins) => `Pin\tSignal\tPin\tSignal\n${byTwos(pins, (cells) => cells.join('\t'))}`,
  },
  {
    name: 'four columns between spaces',
    write: (pins) => byTwos(pins, (cells) => cells.map((cell) => cell.padEnd(36)).join('  ')),
  },
  {
    name: 'the word first',
    write: (pins) => `Signal\tPin\n${lines(pins, (label, word) => `${word}\t${label}`)}`,
  },
  { name: 'one line', write: (pins) => pins.map(([label, , word]) => `pin ${label} ${word}`).join('; ') },
  { name: 'pins of the same word together', write: together },
  { name: 'labels and words by turns', write: (pins) => lines(pins, (label, word) => `${label}\n${word}`) },
  { name: 'commas of a spreadsheet', write: (pins) => lines(pins, (label, word) => `${label},"${word}"`) },
  {
    name: 'underlines in capitals',
    write: (pins) =>
      lines(pins, (label, word) => `#${label}  ${word.toUpperCase().replace(/(?<=\w) (?=\w)/g, '_')}`),
  },
];
