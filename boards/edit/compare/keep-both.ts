import type { Alternative, Pin } from '../../document/connector';
import { LIMITS } from '../../document/limits';
import { alternativeOf } from '../merge-pin';
import { same } from '../same';
import { factNote, withNotes } from './added-notes';
import { differingFields } from './differing-fields';

/**
 * One pin with everything that two sheets say of it. Where they say the same, or one says more, the pin has
 * the whole; where they differ, mine is what the pin is taken for and theirs is kept beside it with its
 * source, except that a guess gives way to what was read or measured, and a word that nobody understood to
 * a signal. What has no place of its own beside another goes into the notes. The label is that of mine.
 *
 * @param from the name of their sheet
 */
export function keepBoth(mine: Pin, theirs: Pin, from: string): Pin {
  const { values, lost } = bothValues(mine, theirs);
  const { pin, alternatives: _, values: __, notes: ___, ...rest } = { ...theirs, ...mine };
  const said = bothStatements(mine, theirs, from);
  const notes = withNotes(mine.notes, [
    ...besideNotes(mine, theirs, from),
    ...lost.map((value) => factNote(from, 'values', value)),
    theirs.notes ?? '',
  ]);
  return {
    pin,
    ...withoutStatement(rest),
    ...said.statement,
    ...(values.length > 0 && { values }),
    ...(said.alternatives.length > 0 && { alternatives: said.alternatives }),
    ...(notes !== undefined && { notes }),
  };
}

/** What is kept beside mine in a way of its own, or says nothing. */
const KEPT = [
  'pin',
  'missing',
  'signal',
  'channel',
  'name',
  'source',
  'confidence',
  'alternatives',
  'values',
  'notes',
];

/** What does not hang on who said it and has one value: mine stands, and theirs goes into the notes. */
function besideNotes(mine: Pin, theirs: Pin, from: string): readonly string[] {
  const [ours, others] = [new Map(Object.entries(mine)), new Map(Object.entries(theirs))];
  return differingFields(mine, theirs, KEPT)
    .filter((field) => conflict(ours.get(field), others.get(field)))
    .map((field) => factNote(from, field, others.get(field)));
}

function conflict(mine: unknown, theirs: unknown): boolean {
  return mine !== undefined && theirs !== undefined && !same(mine, theirs);
}

type Statement = Pick<Pin, 'missing' | 'signal' | 'channel' | 'name' | 'source' | 'confidence'>;

/** What one source states of a pin. "Unknown" is what a pin is without a statement. */
function statementOf({ missing, signal, channel, name, source, confidence }: Pin): Statement {
  return {
    ...(missing !== undefined && { missing }),
    ...(signal !== undefined && signal !== 'unknown' && { signal }),
    ...(channel !== undefined && { channel }),
    ...(name !== undefined && { name }),
    ...(source !== undefined && { source }),
    ...(confidence !== undefined && { confidence }),
  };
}

function withoutStatement<T extends Statement>(pin: T): Omit<T, keyof Statement> {
  const {
    missing: _,
    signal: __,
    channel: ___,
    name: ____,
    source: _____,
    confidence: ______,
    ...rest
  } = pin;
  return rest;
}

function bothStatements(
  mine: Pin,
  theirs: Pin,
  from: string,
): { readonly statement: Statement; readonly alternatives: Alternative[] } {
  const [first, second] = [statementOf(mine), statementOf(theirs)];
  const known = [...(mine.alternatives ?? []), ...(theirs.alternatives ?? [])];
  if (Object.keys(second).length === 0) return { statement: first, alternatives: once(known) };
  if (Object.keys(first).length === 0) return { statement: second, alternatives: once(known) };
  if (agree(first, second)) return { statement: { ...second, ...first }, alternatives: once(known) };
  const swapped = givesWay(first, second);
  const beside = swapped ? alternativeOf({ pin: mine.pin, ...first }) : besideOf(theirs.pin, second, from);
  return { statement: swapped ? second : first, alternatives: once([beside, ...known]) };
}

function besideOf(pin: string, statement: Statement, from: string): Alternative {
  const where = `“${from}”, no source given`.slice(0, LIMITS.textLength);
  return alternativeOf({ pin, ...statement }, { kind: 'guessed', where });
}

/** Whether two statements say the same signal, and nothing else that is not so. */
function agree(mine: Statement, theirs: Statement): boolean {
  const further = differingFields(mine, theirs, ['missing', 'signal']);
  const [a, b] = [new Map(Object.entries(mine)), new Map(Object.entries(theirs))];
  return sameSignal(mine, theirs) && !further.some((field) => conflict(a.get(field), b.get(field)));
}

function sameSignal(mine: Statement, theirs: Statement): boolean {
  if (mine.missing === true || theirs.missing === true) return mine.missing === theirs.missing;
  return mine.signal === theirs.signal;
}

function givesWay(mine: Statement, theirs: Statement): boolean {
  const [ours, others] = [understood(mine), understood(theirs)];
  if (ours !== others) return others;
  return mine.source?.kind === 'guessed' && theirs.source !== undefined && theirs.source.kind !== 'guessed';
}

function understood({ missing, signal }: Statement): boolean {
  return missing === true || signal !== undefined;
}

type Value = NonNullable<Pin['values']>[number];

/** One value for each parameter, mine first, as many as a pin can hold; and those of theirs that had no room. */
function bothValues(mine: Pin, theirs: Pin): { readonly values: Value[]; readonly lost: readonly Value[] } {
  const values = [...(mine.values ?? [])];
  const lost: Value[] = [];
  for (const value of theirs.values ?? []) {
    if (values.some((other) => same(other, value))) continue;
    const known = values.some(({ parameter }) => parameter === value.parameter);
    if (known || values.length >= LIMITS.valuesPerPin) lost.push(value);
    else values.push(value);
  }
  return { values, lost };
}

function once(alternatives: readonly Alternative[]): Alternative[] {
  return alternatives.filter((one, at) => alternatives.findIndex((other) => same(one, other)) === at);
}
