import type { Build } from '../../../boards/document/build';
import { connectorOf, pinOf } from '../../../boards/document/lookup';
import { gridIndex } from '../../../boards/document/numbering';
import type { Take, TakeOf } from '../../../boards/edit/compare/taking';
import { type ComparedRow, pinSaid, type Said } from './compared-rows';

const BLANK: Said = { main: '', small: '' };

/** What would stand in a row once everything chosen has been taken over. */
export function saidAfter(row: ComparedRow, after: Build | null, takeOf: TakeOf): Said {
  if (after === null || row.takeKey === null) return BLANK;
  const { pin } = row;
  if (pin === undefined) return wholeAfter(row, takeOf(row.takeKey));
  const there = connectorOf(after.board, pin.connector);
  const label = takeOf(`connector ${pin.connector}`) === 'theirs' ? pin.theirs : pin.mine;
  const stands =
    there !== undefined && label !== undefined && gridIndex(there.grid).cellOf(label) !== undefined;
  return stands ? pinSaid(pinOf(there, label), false, []) : { main: 'told in the notes', small: '' };
}

/** A whole connector or lead, or something said of the whole sheet. */
function wholeAfter({ heading, mine, theirs, key }: ComparedRow, take: Take): Said {
  const [onlyMine, onlyTheirs] = [theirs.main === ABSENT, mine.main === ABSENT];
  if (heading && onlyTheirs) return { main: take === 'mine' ? 'left out' : 'added', small: '' };
  if (heading && onlyMine) return { main: take === 'theirs' ? 'taken out' : 'stays', small: '' };
  if (take === 'mine') return { main: 'stays', small: '' };
  if (take === 'theirs') return { main: heading ? 'as theirs' : theirs.main, small: '' };
  const small = key.startsWith('lead ') ? 'theirs beside it' : 'theirs in the notes';
  return { main: 'stays', small };
}

const ABSENT = 'not in this sheet';
