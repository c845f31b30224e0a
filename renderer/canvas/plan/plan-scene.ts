import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Build } from '../../../boards/document/build';
import { grown, type Rect, rectAbout, rectRoundAll } from '../../../boards/drawing/geometry';
import { measureByTable } from '../../../boards/drawing/measure';
import type { BoardRemark } from '../../../boards/fit/board-remarks';
import type { Scene } from '../scene/scene';
import { sceneOf } from '../scene/scene-of';

/** As manuals draw a board: from above, not turned. */
export const PLAN_VIEW: Build['view'] = { turn: 0, mirrored: false };

/** The drawing of a board alone, by the same rules as the wired one. */
export function planScene(id: string, board: BoardSheet): Scene {
  const bare: Build = {
    format: 'leadwright/build',
    version: 1,
    id,
    name: board.name,
    board,
    case: { format: 'leadwright/case', version: 1, id: 'none', name: 'none', leads: [] },
    extras: [],
    seats: [],
    view: PLAN_VIEW,
  };
  const scene = sceneOf(bare, { view: PLAN_VIEW, measure: measureByTable });
  return { ...scene, bounds: standingOn(scene) };
}

/**
 * The board and what stands on it, without the room for names: they reach far beyond a small board, which
 * would shrink for them.
 */
function standingOn({ outline, blocks, holes }: Scene): Rect {
  return (
    rectRoundAll([
      outline,
      ...blocks.map(({ shell }) => shell),
      ...holes.map(({ centre, radius }) => rectAbout(centre, 2 * radius, 2 * radius)),
    ]) ?? outline
  );
}

/** What the remarks are about, each once. */
export function remarkedRects({ blocks, holes }: Scene, remarks: readonly BoardRemark[]): readonly Rect[] {
  const connectors = new Set(
    remarks.flatMap((remark) =>
      'connectors' in remark ? remark.connectors : 'connector' in remark ? [remark.connector] : [],
    ),
  );
  const remarkedHoles = new Set(remarks.flatMap((remark) => ('hole' in remark ? [remark.hole] : [])));
  return [
    ...blocks.filter(({ connector }) => connectors.has(connector.id)).map(({ shell }) => shell),
    ...holes
      .filter(({ hole }) => remarkedHoles.has(hole))
      .map(({ centre, radius }) => grown(rectAbout(centre, 2 * radius, 2 * radius), radius * 0.3)),
  ];
}
