import type { Connector, Pin, PinSource } from '../../document/connector';
import { pinOf } from '../../document/lookup';
import { gridIndex } from '../../document/numbering';
import { SOURCE_WORDS, SURENESS_WORDS } from '../../document/pin-words';
import { surenessOf } from '../../document/sureness';
import { signalOf } from '../../signals/signals';
import { isDoubtful } from './sureness';

/** A connector's sources, each with the letter by which the rows of its table name it. */
export interface SourceList {
  readonly letterOf: (source: PinSource) => string;
  /** "a  standard: Front Panel …", in the order in which they are first named. */
  readonly lines: readonly string[];
}

/** Collects where a connector's pins were read, each place once. */
export function sourcesOf(connector: Connector): SourceList {
  const letters = new Map<string, string>();
  const lines: string[] = [];
  const note = (source: PinSource | undefined) => {
    if (source?.where === undefined || source.where.trim() === '') return;
    const key = keyOf(source);
    if (letters.has(key)) return;
    letters.set(key, letterAt(letters.size));
    lines.push(`${letters.get(key)}\u00a0\u00a0${SOURCE_WORDS[source.kind]}: ${source.where.trim()}`);
  };
  for (const { label } of gridIndex(connector.grid).positions) {
    const pin = pinOf(connector, label);
    note(pin.source);
    for (const { source } of pin.alternatives ?? []) note(source);
  }
  return { letterOf: (source) => letters.get(keyOf(source)) ?? '', lines };
}

function keyOf({ kind, where = '' }: PinSource): string {
  return `${kind} ${where.trim()}`;
}

/** a, b … z, aa, ab … */
function letterAt(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : letterAt(Math.floor(index / 26) - 1) + last;
}

/** What the rows of a connector's table say, by their columns. */
export interface PinRow {
  readonly pin: string;
  readonly signal: string;
  readonly print: string;
  readonly name: string;
  readonly source: string;
  readonly sure: string;
}

export interface PinRows {
  /** In counting order. */
  readonly rows: readonly PinRow[];
  /** How many pins of a large connector are left out, because nothing is known of them. */
  readonly leftOut: number;
}

/** Up to here a pin of which nothing is known has a row all the same: to be filled in by hand. */
const MOST_BLANK_ROWS = 100;

/** The rows of a connector's table. */
export function pinRows(connector: Connector, sources: SourceList): PinRows {
  const { positions } = gridIndex(connector.grid);
  const listed =
    positions.length <= MOST_BLANK_ROWS
      ? positions
      : positions.filter(({ label }) => !isBlank(pinOf(connector, label)));
  const rows = listed.map(({ label }): PinRow => {
    const pin = pinOf(connector, label);
    return {
      pin: label,
      signal: signalWords(pin),
      print: pin.print?.trim() ?? '',
      name: pin.name?.trim() ?? '',
      source: sourceCell(pin, sources),
      sure: sureWords(pin),
    };
  });
  return { rows, leftOut: positions.length - listed.length };
}

function isBlank({ missing, signal, print, name, source }: Pin): boolean {
  return !missing && (signal ?? 'unknown') === 'unknown' && !print && !name && source === undefined;
}

const NOT_SAID = 'not said';

function isGapWithoutSource({ missing, source }: Pin): boolean {
  return missing === true && source === undefined;
}

function signalWords(pin: Pin): string {
  if (pin.missing === true) return 'no pin here';
  const { name } = signalOf(pin.signal ?? 'unknown');
  return pin.channel === undefined ? name : `${name}, port\u00a0${pin.channel}`;
}

function sourceCell(pin: Pin, sources: SourceList): string {
  const { source } = pin;
  if (source === undefined) return isGapWithoutSource(pin) ? '' : NOT_SAID;
  const letter = sources.letterOf(source);
  return letter === '' ? SOURCE_WORDS[source.kind] : `${SOURCE_WORDS[source.kind]}\u00a0${letter}`;
}

function sureWords(pin: Pin): string {
  const sureness = surenessOf(pin);
  if (sureness === 'unsaid') return isGapWithoutSource(pin) ? '' : NOT_SAID;
  const words = SURENESS_WORDS[sureness];
  return isDoubtful(pin) ? `?\u00a0${words}` : words;
}
