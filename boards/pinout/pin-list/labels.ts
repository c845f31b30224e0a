/** How the pins of a list are labelled, so that "A1" is a label in one list and a word in another. */
export interface LabelStyle {
  /**
   * The labels that a connector has, each as it is written and by its capitals, where no other is written so.
   * A connector that only counts has none of its own.
   */
  readonly own: ReadonlyMap<string, string>;
  /** Whether the list labels its pins with a letter and a number. */
  readonly lettered: boolean;
}

/** Labels at the head of a text, and what stands behind them. */
export interface Labelled {
  readonly labels: readonly string[];
  readonly rest: string;
}

const PIN_WORD = String.raw`(?:p[il1]ns?|contacts?|terminals?|pos(?:ition)?s?\.?|no\.?|nr\.?|number|#)`;
const HEAD = new RegExp(String.raw`^[\s(\[#*•·-]*(?:${PIN_WORD}\s*[#.:]?\s*)?[(\[#]?\s*`, 'i');
const ONE = /^(?:[A-Za-z]{1,2}\d{1,3}|\d{1,4}|[A-Za-z]{1,8}[+-]?)(?![A-Za-z0-9%]|\.\d)/;
const JOINT = new RegExp(
  String.raw`^\s*(?:(,|&|\+(?=\s)|/|and\b|und\b)|(-|\.\.\.?|to\b|thru\b|through\b))\s*(?:${PIN_WORD}\s*)?`,
  'i',
);
const SEPARATOR = /^\s*[)\].:=>|,;]+\s*(?:[:=>]+|-+>?(?=\s))*\s*|^\s*->?\s+|^\s+/;

/** No word of a list is for more pins than this. */
const MOST_LABELS = 256;

/** Longer lines do not name a word before its pins. */
const LONGEST_BEHIND = 240;

/**
 * The labels that a text begins with: "Pin 3: PWRBTN#", "5) GND", "1-4 NC", "pins 5, 7: GND".
 * Undefined where it begins with none. A number that belongs to a voltage is no label.
 */
export function labelsBefore(text: string, style: LabelStyle): Labelled | undefined {
  const head = HEAD.exec(text)?.[0] ?? '';
  const first = labelAt(text.slice(head.length), style);
  if (first === undefined) return undefined;
  const labels = [first.label];
  let rest = first.rest;
  for (;;) {
    const joint = JOINT.exec(rest);
    const next = joint && labelAt(rest.slice(joint[0].length), style);
    if (
      !joint ||
      !next ||
      /^\s*V(?:DC|SB|CC|BUS|OLTS?)?\b/i.test(next.rest) ||
      !endsThere(next.rest, joint[0])
    )
      break;
    const range = joint[2] === undefined ? [next.label] : between(labels.at(-1) ?? '', next.label);
    if (range === undefined || labels.length + range.length > MOST_LABELS) break;
    labels.push(...range);
    rest = next.rest;
  }
  const separator = SEPARATOR.exec(rest)?.[0];
  if (separator === undefined && rest !== '') return undefined;
  return { labels, rest: rest.slice(separator?.length ?? 0).trim() };
}

/** Whether a text is labels and nothing else. */
export function onlyLabels(text: string, style: LabelStyle): readonly string[] | undefined {
  const read = labelsBefore(text, style);
  return read?.rest === '' ? read.labels : undefined;
}

/** "GND: 5, 7", "NC (pins 9-12)": the word first, its pins behind it. */
export function labelsBehind(text: string, style: LabelStyle): Labelled | undefined {
  if (text.length > LONGEST_BEHIND) return undefined;
  const [, word, list] =
    new RegExp(
      String.raw`^(.*?\S)\s*(?:[:=]\s*|[(\[,:=-]*\s*(?=${PIN_WORD}\s*\d))(${PIN_WORD}?\s*[\dA-Z][^:=]*)$`,
      'i',
    ).exec(text.replace(/[)\].]+\s*$/, '')) ?? [];
  if (word === undefined || list === undefined || labelsBefore(word, style)) return undefined;
  const labels = onlyLabels(list, style);
  return labels && { labels, rest: word.trim() };
}

function labelAt(text: string, { own, lettered }: LabelStyle): { label: string; rest: string } | undefined {
  const found = ONE.exec(text)?.[0];
  if (found === undefined) return undefined;
  const capitals = found.toUpperCase();
  const known = own.get(found) ?? own.get(capitals);
  const isLabel =
    known !== undefined || /^\d+$/.test(found) || (lettered && /^[A-Z]{1,2}\d+$/.test(capitals));
  return isLabel
    ? { label: known ?? capitals.replace(/^0+(?=\d)/, ''), rest: text.slice(found.length) }
    : undefined;
}

/** "5, 7: GND" are two labels; "1 DCD, 2 RXD" is one, and another behind the comma. */
function endsThere(rest: string, joint: string): boolean {
  return !/^\s*[,;]/.test(joint) || rest === '' || !/^\s*[;]/.test(rest);
}

/** The labels behind the first one up to the last one; undefined where they are not counted upwards. */
function between(first: string, last: string): readonly string[] | undefined {
  const [, letters = '', from] = /^([A-Za-z]*)(\d+)$/.exec(first) ?? [];
  const [, same = '', to] = /^([A-Za-z]*)(\d+)$/.exec(last) ?? [];
  if (from === undefined || to === undefined || (same !== '' && same !== letters)) return undefined;
  const length = Number(to) - Number(from);
  if (length <= 0 || length > MOST_LABELS) return undefined;
  return Array.from({ length }, (_, at) => letters + String(Number(from) + 1 + at));
}
