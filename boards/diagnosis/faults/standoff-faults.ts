import { capital } from '../../base/capital';
import type { Build } from '../../document/build';
import { standoffName } from '../../routing/case/standoff-words';
import { standoffsFor } from '../../routing/case/standoffs';
import type { OwnFault } from './own/share-out';

/**
 * The standoffs of this tray that may touch this board from below; undefined where the one or the other is not
 * known. One that was seen there, or is pressed in, is there; at the others nobody has looked.
 */
export function standoffFaults({ board, case: { tray } }: Build): readonly OwnFault[] | undefined {
  if (tray === undefined) return undefined;
  const known = standoffsFor(board.outline, tray);
  if (known.kind === 'unknown') return undefined;
  return known.findings.flatMap((finding) => {
    if (finding.code !== 'short') return [];
    const name = `${capital(standoffName(finding.standoff, tray))} touches the board, which has no hole there.`;
    return [{ id: `standoff/${finding.standoff}`, name, isThere: finding.level === 'danger' }];
  });
}
