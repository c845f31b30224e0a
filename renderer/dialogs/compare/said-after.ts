import type { BoardSheet } from '../../../boards/document/board-sheet';
import { connectorOf, pinOf } from '../../../boards/document/lookup';
import { gridIndex } from '../../../boards/document/numbering';
import type { Take, TakeOf } from '../../../boards/edit/compare/taking';
import { ABSENT, type ComparedRow, pinSaid, type Said, UNSAID } from './compared-rows';

const BLANK: Said = { main: '', small: '' };

/**
 * What would stand in a row once everything chosen has been taken over.
 *
 * @param after the board as it would be; null of a case, and where nothing can be taken over
 */
export function saidAfter(row: ComparedRow, after: BoardSheet | null, takeOf: TakeOf): Said {
  if (row.pin !== undefined)
    return row.takeKey === null || after === null ? BLANK : pinAfter(row.pin, after, takeOf);
  if (row.particular !== undefined) {
    const { field, goesWith } = row.particular;
    return particularAfter(row, field, takeOf(goesWith));
  }
  return row.takeKey === null ? BLANK : wholeAfter(row, takeOf(row.takeKey));
}

function pinAfter(pin: NonNullable<ComparedRow['pin']>, after: BoardSheet, takeOf: TakeOf): Said {
  const there = connectorOf(after, pin.connector);
  const label = takeOf(`connector ${pin.connector}`) === 'theirs' ? pin.theirs : pin.mine;
  const stands =
    there !== undefined && label !== undefined && gridIndex(there.grid).cellOf(label) !== undefined;
  return stands ? pinSaid(pinOf(there, label), false, []) : { main: 'told in the notes', small: '' };
}

/** Lists and notes, which can hold what both say. */
const JOINED = ['notes', 'readings', 'photos'];

function particularAfter({ mine, theirs }: ComparedRow, field: string, take: Take): Said {
  if (take === 'mine') return mine;
  if (take === 'theirs' || mine.main === UNSAID) return theirs;
  if (theirs.main === UNSAID) return mine;
  if (JOINED.includes(field)) return { main: 'what both say', small: '' };
  return { main: mine.main, small: 'theirs in the notes' };
}

/** A connector or a lead that only one has, or two that cannot be one. */
function wholeAfter({ mine, theirs, apart = false }: ComparedRow, take: Take): Said {
  const said = (main: string): Said => ({ main, small: '' });
  if (mine.main === ABSENT) return said(take === 'mine' ? 'left out' : 'added');
  if (theirs.main === ABSENT) return said(take === 'theirs' ? 'taken out' : 'stays');
  if (!apart) return BLANK;
  if (take === 'both') return said('both, one beside the other');
  return said(take === 'mine' ? 'stays' : 'as theirs');
}
