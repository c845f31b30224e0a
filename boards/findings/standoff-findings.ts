import type { Build } from '../document/build';
import { type StandoffFinding, standoffsFor } from '../routing/case/standoffs';
import type { Remedy } from './finding';
import { standoffEmptyText } from './words/remedies';

/** What the tray and the holes of the board say of each other, of one code; nothing where one is not known. */
export function standoffFindings<Code extends StandoffFinding['code']>(
  { board, case: { tray } }: Build,
  code: Code,
): readonly Extract<StandoffFinding, { code: Code }>[] {
  const known = tray && standoffsFor(board.outline, tray);
  if (known?.kind !== 'known') return [];
  const isOf = (each: StandoffFinding): each is Extract<StandoffFinding, { code: Code }> =>
    each.code === code;
  return known.findings.filter(isOf);
}

/** Where nothing is, nothing touches the board. */
export function emptyRemedy(standoff: string, there: boolean): Remedy {
  return {
    text: standoffEmptyText(there),
    command: { name: 'note-standoffs', args: { seen: [{ standoff, seen: 'empty' }] } },
  };
}
