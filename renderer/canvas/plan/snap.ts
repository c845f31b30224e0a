import type { Mm } from '../../../boards/base/units';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Connector, Place } from '../../../boards/document/connector';
import { boxAt, movedPlace } from '../../../boards/fit/board-place';
import { type Box, connectorBox } from '../../../boards/fit/geometry';
import type { PlanStep } from '../../store/session';

const MM_PER_TENTH_INCH: Mm = 2.54;

/** How coarse each choice is; a place is kept in hundredths of a millimetre whatever is chosen. */
const STEP_MM: Readonly<Record<PlanStep, Mm>> = {
  'tenth-mm': 0.1,
  'tenth-inch': MM_PER_TENTH_INCH,
  free: 0.01,
};

/** Nearer than this two lines are one: the rounding of two places. */
const SAME_MM: Mm = 0.011;

/** A line along which a connector stands level with another, or with the board's edge. */
export interface Guide {
  /** "x": a line down the board at that distance from its left edge; "y": one across it. */
  readonly axis: 'x' | 'y';
  readonly atMm: Mm;
  /** From where to where along the line the things it joins reach. */
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

/** A side or a middle that something may stand level with. */
export interface Level {
  readonly atMm: Mm;
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

export type Levels = Readonly<Record<Guide['axis'], readonly Level[]>>;

/**
 * Where a dragged connector comes to stand: level with another connector or the edge where that is no
 * further than `reachMm`, otherwise on the step. On the inch grid nothing pulls it off the grid.
 */
export function snappedPlace(
  board: BoardSheet,
  connector: Connector,
  place: Place,
  step: PlanStep,
  reachMm: Mm,
): Place {
  const onStep = {
    ...place,
    xMm: rounded(place.xMm, STEP_MM[step]),
    yMm: rounded(place.yMm, STEP_MM[step]),
  };
  if (step === 'tenth-inch') return movedPlace(onStep, 0, 0);
  const others = levelsBeside(board, connector.id);
  const box = boxAt(connector, place);
  const pulled = (axis: Guide['axis']) => nearestPull(levelsOf(box)[axis], others[axis], reachMm);
  const [dx, dy] = [pulled('x'), pulled('y')];
  return movedPlace(
    {
      ...place,
      xMm: dx === undefined ? onStep.xMm : place.xMm + dx,
      yMm: dy === undefined ? onStep.yMm : place.yMm + dy,
    },
    0,
    0,
  );
}

/** Every line along which the connector, standing there, is level with another or with the edge. */
export function guidesAt(board: BoardSheet, connector: Connector, place: Place): readonly Guide[] {
  return guidesBetween(levelsOf(boxAt(connector, place)), levelsBeside(board, connector.id));
}

/** Every line along which something with these levels stands level with others. */
export function guidesBetween(own: Levels, others: Levels): readonly Guide[] {
  return (['x', 'y'] as const).flatMap((axis) =>
    own[axis].flatMap((level): readonly Guide[] => {
      const met = others[axis].filter(({ atMm }) => Math.abs(atMm - level.atMm) < SAME_MM);
      const [first] = met;
      if (first === undefined) return [];
      const all = [level, ...met];
      return [
        {
          axis,
          atMm: first.atMm,
          fromMm: Math.min(...all.map(({ fromMm }) => fromMm)),
          toMm: Math.max(...all.map(({ toMm }) => toMm)),
        },
      ];
    }),
  );
}

/** The shortest way to any level that is near enough; undefined where none is. */
export function nearestPull(own: readonly Level[], others: readonly Level[], reachMm: Mm): Mm | undefined {
  let best: Mm | undefined;
  for (const { atMm } of own)
    for (const other of others) {
      const by = other.atMm - atMm;
      if (Math.abs(by) <= reachMm && (best === undefined || Math.abs(by) < Math.abs(best))) best = by;
    }
  return best;
}

function levelsBeside({ connectors, outline }: BoardSheet, id: string): Levels {
  const { widthMm, depthMm } = outline;
  const boxes = connectors.filter((other) => other.id !== id).map(connectorBox);
  const each = boxes.map(levelsOf);
  return {
    x: [...each.flatMap(({ x }) => x), ...[0, widthMm].map((atMm) => ({ atMm, fromMm: 0, toMm: depthMm }))],
    y: [...each.flatMap(({ y }) => y), ...[0, depthMm].map((atMm) => ({ atMm, fromMm: 0, toMm: widthMm }))],
  };
}

/** The sides and the middles of a box. */
export function levelsOf({ leftMm, topMm, rightMm, bottomMm }: Box): Levels {
  const down = { fromMm: topMm, toMm: bottomMm };
  const across = { fromMm: leftMm, toMm: rightMm };
  return {
    x: [leftMm, (leftMm + rightMm) / 2, rightMm].map((atMm) => ({ atMm, ...down })),
    y: [topMm, (topMm + bottomMm) / 2, bottomMm].map((atMm) => ({ atMm, ...across })),
  };
}

function rounded(value: Mm, step: Mm): Mm {
  return Math.round(value / step) * step;
}
