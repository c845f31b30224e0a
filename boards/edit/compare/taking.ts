import { LIMITS } from '../../document/limits';
import type { Refusal } from '../refusal';
import { factNote, withNotes } from './added-notes';
import type { SheetRow } from './compare-boards';

export const TAKES = ['mine', 'both', 'theirs'] as const;

/** What is taken of a row of a comparison: mine stays, both are kept, or theirs takes its place. */
export type Take = (typeof TAKES)[number];
export type TakeOf = (rowKey: string) => Take;

/** Anything that a sheet describes and that notes can be put to. */
interface Noted {
  notes?: string | undefined;
}

/**
 * Mine with its differing fields as they were chosen. Of both, mine stands and theirs goes into the notes;
 * where only one of them says anything, that stands.
 */
export function takeFields<T extends Noted>(
  mine: T,
  theirs: T,
  rows: readonly SheetRow[],
  takeOf: TakeOf,
  from: string,
): T {
  const taken = { ...mine };
  const lines: string[] = [];
  const said = new Map(Object.entries(theirs));
  for (const { key, field } of rows) {
    const take = takeOf(key);
    if (take === 'theirs' || (take === 'both' && !Object.hasOwn(mine, field)))
      copyField(taken, theirs, field);
    else if (take === 'both' && field === 'notes') lines.push(theirs.notes ?? '');
    else if (take === 'both' && field === 'name') lines.push(`Also called “${from}”.`);
    else if (take === 'both' && said.has(field)) lines.push(factNote(from, field, said.get(field)));
  }
  const notes = withNotes(taken.notes, lines);
  return notes === undefined ? taken : { ...taken, notes };
}

function copyField<T extends object>(to: T, from: T, field: string): void {
  Reflect.deleteProperty(to, field);
  for (const key in from) if (key === field) to[key] = from[key];
}

/** An id like the one wanted that is not taken; it is taken then. */
export function freeId(wanted: string, taken: Set<string>): string {
  const stem = wanted.slice(0, LIMITS.idLength - 6).replace(/-+$/, '');
  let id = wanted;
  for (let number = 2; taken.has(id); number++) id = `${stem}-${number}`;
  taken.add(id);
  return id;
}

interface Filled extends Noted {
  alternatives?: readonly unknown[] | undefined;
  readings?: readonly unknown[] | undefined;
}

/** What has become more than a sheet can hold; null where everything has room. */
export function tooFull(things: readonly Filled[]): Extract<Refusal, { code: 'full' }> | null {
  for (const { alternatives = [], readings = [], notes = '' } of things) {
    if (alternatives.length > LIMITS.alternativesPerPin)
      return { code: 'full', what: 'statements', limit: LIMITS.alternativesPerPin };
    if (readings.length > LIMITS.readingsPerConnector)
      return { code: 'full', what: 'readings', limit: LIMITS.readingsPerConnector };
    if (notes.length > LIMITS.noteLength) return { code: 'full', what: 'letters', limit: LIMITS.noteLength };
  }
  return null;
}
