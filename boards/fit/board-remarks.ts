import { byIdentity } from '../base/by-identity';
import type { BoardSheet } from '../document/board-sheet';
import type { MountingHole, Outline } from '../document/outline';
import { type Box, boxesCollide, connectorBox } from './geometry';

/** Something about places that cannot be so on a real board, or hardly. Closed: each has words in the window. */
export type BoardRemark =
  | { readonly code: 'connector-outside'; readonly connector: string }
  | { readonly code: 'connector-over-edge'; readonly connector: string }
  | { readonly code: 'connectors-overlap'; readonly connectors: readonly [string, string] }
  | { readonly code: 'hole-outside'; readonly hole: string }
  | { readonly code: 'hole-under-connector'; readonly hole: string; readonly connector: string };

/** More than this are no help to anybody, and a sheet of thousands in one place would have millions. */
export const MOST_REMARKS = 50;

/** A hole of unknown width is taken as a point. */
function holeBox({ xMm, yMm, diameterMm = 0 }: MountingHole): Box {
  const half = diameterMm / 2;
  return { leftMm: xMm - half, topMm: yMm - half, rightMm: xMm + half, bottomMm: yMm + half };
}

/**
 * What of the plan contradicts itself: connectors over each other, over a hole, or beyond the edge; holes
 * beyond the edge. Told and not refused, because a manual can be imprecise. In the order of the sheet.
 */
export const boardRemarks = byIdentity((board: BoardSheet): readonly BoardRemark[] => {
  const remarks: BoardRemark[] = [];
  for (const remark of remarksOf(board)) {
    if (remarks.length === MOST_REMARKS) break;
    remarks.push(remark);
  }
  return remarks;
});

function* remarksOf({ outline, connectors }: BoardSheet): Generator<BoardRemark> {
  const boxes = connectors.map((connector) => ({ id: connector.id, box: connectorBox(connector) }));
  for (const { id, box } of boxes) {
    if (liesOutside(box, outline)) yield { code: 'connector-outside', connector: id };
    else if (crossesEdge(box, outline)) yield { code: 'connector-over-edge', connector: id };
  }
  yield* overlaps(boxes);
  for (const hole of outline.holes ?? []) {
    const box = holeBox(hole);
    if (crossesEdge(box, outline)) yield { code: 'hole-outside', hole: hole.id };
    for (const each of boxes)
      if (holeMeets(hole, each.box))
        yield { code: 'hole-under-connector', hole: hole.id, connector: each.id };
  }
}

interface Placed {
  readonly id: string;
  readonly box: Box;
}

/** Pairs in the order of their left sides; a connector is only held against those that begin before it ends. */
function* overlaps(boxes: readonly Placed[]): Generator<BoardRemark> {
  const inRow = boxes.toSorted((a, b) => a.box.leftMm - b.box.leftMm);
  for (const [at, one] of inRow.entries())
    for (let next = at + 1; next < inRow.length; next += 1) {
      const other = inRow[next];
      if (other === undefined || other.box.leftMm >= one.box.rightMm) break;
      if (boxesCollide(one.box, other.box))
        yield { code: 'connectors-overlap', connectors: [one.id, other.id] };
    }
}

function liesOutside({ leftMm, topMm, rightMm, bottomMm }: Box, { widthMm, depthMm }: Outline): boolean {
  return rightMm <= 0 || bottomMm <= 0 || leftMm >= widthMm || topMm >= depthMm;
}

function crossesEdge({ leftMm, topMm, rightMm, bottomMm }: Box, { widthMm, depthMm }: Outline): boolean {
  return leftMm < 0 || topMm < 0 || rightMm > widthMm || bottomMm > depthMm;
}

/** Whether a round hole and an upright box share some area. */
function holeMeets({ xMm, yMm, diameterMm = 0 }: MountingHole, box: Box): boolean {
  const beside = Math.max(box.leftMm - xMm, xMm - box.rightMm, 0);
  const above = Math.max(box.topMm - yMm, yMm - box.bottomMm, 0);
  return Math.hypot(beside, above) < Math.max(diameterMm / 2, Number.MIN_VALUE);
}
