import { ok, type Result, refuse } from '../../../../boards/base/result';
import { type Connector, type Pin, PinZ } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import { pinOf } from '../../../../boards/document/lookup';
import { readFields } from '../../../../boards/document/problem/read-fields';
import type { HeaderLayout, Spot } from './header-layout';

/** The columns of copied pins. A table program keeps them, and the head tells our own text from any other. */
const HEAD = [
  'row',
  'column',
  'pin',
  'missing',
  'signal',
  'port',
  'belongs to',
  'print',
  'name',
  'read in',
  'where',
  'sure',
  'more',
] as const;

/** What is known of a pin, and how far it lies from the top left of what was copied. */
export interface CopiedPin {
  readonly spot: Spot;
  readonly pin: Pin;
}

/** Chosen pins as lines of tab-separated words, row by row as drawn. */
export function copiedText(connector: Connector, layout: HeaderLayout, labels: readonly string[]): string {
  const spots = labels.map((label) => layout.spotOf(label));
  const top = Math.min(...spots.map(([row]) => row));
  const left = Math.min(...spots.map(([, col]) => col));
  const lines = labels.map((label, at) => {
    const [row, col] = spots[at] ?? [0, 0];
    const { pin, missing, signal, channel, belongsTo, print, name, source, confidence, ...more } = pinOf(
      connector,
      label,
    );
    return [
      row - top,
      col - left,
      pin,
      missing ? 'yes' : '',
      signal,
      channel,
      belongsTo,
      print,
      name,
      source?.kind,
      source?.where,
      confidence,
      Object.keys(more).length === 0 ? '' : JSON.stringify(more),
    ]
      .map((word) => String(word ?? '').replaceAll('\t', ' '))
      .join('\t');
  });
  return [HEAD.join('\t'), ...lines].join('\n');
}

/** Pins out of such text, or what is wrong with it, in words. */
export function readCopied(text: string): Result<readonly CopiedPin[], string> {
  const [head = '', ...lines] = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  if (head.trim().split(/\t/).join('\t') !== HEAD.join('\t'))
    return refuse(
      'What was copied are no pins of a header. Copy some in a grid of pins first; a list from a manual goes through “Paste a pin list”.',
    );
  if (lines.length > LIMITS.gridSide * LIMITS.gridSide)
    return refuse('That is more pins than a header can have. Copy fewer.');
  const pins: CopiedPin[] = [];
  for (const [at, line] of lines.entries()) {
    const pin = pinIn(line);
    if (!pin.ok) return refuse(`Line\u00a0${at + 2} of what was copied: ${pin.problem} Nothing was pasted.`);
    pins.push(pin.value);
  }
  return pins.length === 0 ? refuse('There is no pin in what was copied.') : ok(pins);
}

function pinIn(line: string): Result<CopiedPin, string> {
  const [row = '', col = '', pin, missing, signal, channel, belongsTo, print, name, kind, where, sure, more] =
    line.split('\t').map((word) => word.trim());
  if (!/^\d{1,2}$/.test(row) || !/^\d{1,2}$/.test(col))
    return refuse('it has to begin with a row and a column, counted from 0.');
  const rest = moreIn(more ?? '');
  if (!rest.ok) return rest;
  const said = {
    ...rest.value,
    pin,
    missing: missing === 'yes' || undefined,
    signal,
    channel,
    belongsTo,
    print,
    name,
    source: kind ? { kind, ...(where && { where }) } : undefined,
    confidence: sure ? shareIn(sure) : undefined,
  };
  const given = Object.fromEntries(
    Object.entries(said).filter(([, value]) => value !== undefined && value !== ''),
  );
  const read = readFields(PinZ, given);
  if (read.ok) return ok({ spot: [Number(row), Number(col)], pin: read.value });
  const [field] = read.problem.fields;
  return refuse(
    field ? `“${field.path}” has to be ${field.expected}, and is ${field.found}.` : 'it is no pin.',
  );
}

/** The number a text stands for; the text itself where it is none, so that it can be told what was found. */
function shareIn(text: string): number | string {
  const share = Number(text);
  return Number.isNaN(share) ? text : share;
}

function moreIn(text: string): Result<object, string> {
  if (text === '') return ok({});
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value === 'object' && value !== null) return ok(value);
  } catch {
    // Said below.
  }
  return refuse('its last column is not as it was copied.');
}

/**
 * Copied pins laid on a header: one of them on all that are chosen, several from the first chosen one on,
 * as they lay. Those that would lie where there is no position are counted.
 */
export function laidOn(
  layout: HeaderLayout,
  chosen: readonly string[],
  copied: readonly CopiedPin[],
): { readonly pins: readonly Pin[]; readonly outside: number } {
  const [one] = copied;
  if (copied.length === 1 && one)
    return { pins: chosen.map((label) => ({ ...one.pin, pin: label })), outside: 0 };
  const spots = chosen.map((label) => layout.spotOf(label));
  const top = Math.min(...spots.map(([row]) => row));
  const left = Math.min(...spots.map(([, col]) => col));
  const pins = copied.flatMap(({ spot: [row, col], pin }) => {
    const label = layout.labelAt([top + row, left + col]);
    return label === null ? [] : [{ ...pin, pin: label }];
  });
  return { pins, outside: copied.length - pins.length };
}
