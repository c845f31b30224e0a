import type { Connector, Pin } from '../../document/connector';
import { pinOf } from '../../document/lookup';
import { gridIndex } from '../../document/numbering';
import { same } from '../same';
import { sameSize } from './match-connectors';

/** What each sheet knows of one pin; null where the sheet has no such position. */
export interface PinPair {
  readonly mine: Pin | null;
  readonly theirs: Pin | null;
}

/**
 * The positions of a connector in two sheets, laid over each other: by label, or by where they stand where
 * the sheets count differently and more of what they say agrees that way. Two grids of different size can
 * only be laid over each other by label, and so can two that were turned differently: their positions are
 * those of the unturned drawing, and one that is turned by half has its first at the other's last.
 */
export function matchPins(mine: Connector, theirs: Connector): readonly PinPair[] {
  const byLabel = pairsBy(mine, theirs, 'label');
  if (!sameSize(mine, theirs) || same(mine.grid.numbering, theirs.grid.numbering)) return byLabel;
  if (mine.place.turn !== theirs.place.turn) return byLabel;
  const byCell = pairsBy(mine, theirs, 'cell');
  return agreeing(byCell) > agreeing(byLabel) ? byCell : byLabel;
}

function pairsBy(mine: Connector, theirs: Connector, by: 'label' | 'cell'): readonly PinPair[] {
  const there = gridIndex(theirs.grid);
  const met = new Set<string>();
  const first = gridIndex(mine.grid).positions.map(({ label, cell }): PinPair => {
    const other = by === 'label' ? there.cellOf(label) && label : there.labelAt(cell);
    if (other !== undefined) met.add(other);
    return { mine: pinOf(mine, label), theirs: other === undefined ? null : pinOf(theirs, other) };
  });
  const rest = there.positions.filter(({ label }) => !met.has(label));
  return [...first, ...rest.map(({ label }) => ({ mine: null, theirs: pinOf(theirs, label) }))];
}

function agreeing(pairs: readonly PinPair[]): number {
  return pairs.filter(({ mine, theirs }) => mine && theirs && saysSame(mine, theirs)).length;
}

function saysSame(mine: Pin, theirs: Pin): boolean {
  if (mine.missing === true || theirs.missing === true) return mine.missing === theirs.missing;
  return mine.signal !== undefined && mine.signal === theirs.signal && mine.channel === theirs.channel;
}
