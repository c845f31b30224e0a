import { capital } from '../../base/capital';
import type { Build } from '../../document/build';
import { standoffName } from '../../routing/case/standoff-words';
import { standoffsFor } from '../../routing/case/standoffs';
import type { Fault } from './fault';

/** How often a standoff that shorts a board is one that the tray does not list. Common practice, no source. */
const UNLISTED_SHARE = 0.1;

/** A standoff of the tray that would touch the board from below. */
interface Touching {
  readonly id: string;
  readonly name: string;
  /** Seen there, or pressed in; else nobody has looked. */
  readonly isThere: boolean;
}

/** Those of this tray under this board; undefined where the one or the other is not known. */
function touchingIn({ board, case: { tray } }: Build): readonly Touching[] | undefined {
  if (tray === undefined) return undefined;
  const known = standoffsFor(board.outline, tray);
  if (known.kind === 'unknown') return undefined;
  return known.findings.flatMap((finding) => {
    if (finding.code !== 'short') return [];
    const name = `${capital(standoffName(finding.standoff, tray))} touches the board, which has no hole there.`;
    return [{ id: `standoff/${finding.standoff}`, name, isThere: finding.level === 'danger' }];
  });
}

/**
 * The standoffs of a build that may touch its board, and beside them one that the tray does not list. Where the
 * build says nothing of standoffs the fault of any machine stands alone.
 *
 * @param any the fault of any machine: what a standoff shows, and how often it is met in all
 */
export function standoffFaults(build: Build, any: Fault): readonly Fault[] {
  const touching = touchingIn(build);
  if (touching === undefined) return [any];
  const weight = (any.weight * (1 - UNLISTED_SHARE)) / touching.length;
  return [
    ...touching.map(({ id, name }) => ({ ...any, id, name, weight })),
    { ...any, weight: any.weight * UNLISTED_SHARE },
  ];
}

/** Ids of the faults that the build itself says are there. */
export function writtenStandoffs(build: Build): readonly string[] {
  return (touchingIn(build) ?? []).filter(({ isThere }) => isThere).map(({ id }) => id);
}
