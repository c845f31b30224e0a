import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Side } from '../../document/connector';
import { placeName } from '../../document/place-names';
import { contains, grown, type Line, type Point, type Rect, rectRound } from '../../drawing/geometry';
import { onTray } from '../../routing/case/board-on-tray';
import type { KnownStandoffs } from './standoff-lines';

/** A place or a hole as it is marked: gets one, stays empty, is near a hole, or is a hole with nothing under it. */
export interface StandoffMark {
  readonly id: string;
  readonly kind: 'set' | 'empty' | 'off' | 'without';
  readonly at: Point;
  /** The letter of the hole, or the name of the place. */
  readonly label: string;
}

/** Further outside the edge than this nothing is marked: the lines of the step tell of it. */
const BEYOND_MM: Mm = 8;
/** Letters of a name that stand beside a mark. */
const LONGEST = 10;

/** The board as it lies on the tray, seen from the front, with every place under it. Millimetres, to scale. */
export interface StandoffPlan {
  readonly board: Rect;
  /** The edge with the sockets of the rear panel. */
  readonly rear: Line;
  readonly marks: readonly StandoffMark[];
}

/** What is marked where; undefined where it is not said how the board lies on the tray. */
export function standoffPlan(
  { board: { outline }, case: { tray } }: Build,
  { uses, without }: KnownStandoffs,
): StandoffPlan | undefined {
  const place = tray?.board;
  if (tray === undefined || place === undefined) return undefined;
  const laid = (at: { readonly xMm: number; readonly yMm: number }): Point => {
    const { xMm, yMm } = onTray(at, place, outline);
    return { x: xMm, y: yMm };
  };
  const { widthMm, depthMm, holes = [] } = outline;
  const board = rectRound([laid({ xMm: 0, yMm: 0 }), laid({ xMm: widthMm, yMm: depthMm })]);
  const holeOf = (id: string) => holes.find((hole) => hole.id === id);
  const marks = uses.flatMap((use): readonly StandoffMark[] => {
    const standoff = tray.standoffs?.find(({ id }) => id === use.standoff);
    if (standoff === undefined || use.kind === 'beside') return [];
    const hole = use.kind === 'set' ? holeOf(use.hole) : undefined;
    const at = { x: standoff.xMm, y: standoff.yMm };
    const name = placeName(tray, standoff.id).replace(/^standoff\s+/iu, '');
    return [{ id: standoff.id, kind: use.kind, at, label: short(hole?.label ?? name) }];
  });
  const bare = without.flatMap((id): readonly StandoffMark[] => {
    const hole = holeOf(id);
    return hole === undefined
      ? []
      : [{ id: `hole ${id}`, kind: 'without', at: laid(hole), label: short(hole.label ?? id) }];
  });
  const round = grown(board, BEYOND_MM);
  return {
    board,
    rear: edgeOf(board, place.rear),
    marks: [...marks, ...bare].filter(({ at }) => contains(round, at)),
  };
}

function short(name: string): string {
  const letters = [...name];
  return letters.length > LONGEST ? `${letters.slice(0, LONGEST - 1).join('')}…` : name;
}

function edgeOf({ x, y, width, height }: Rect, side: Side): Line {
  const [right, bottom] = [x + width, y + height];
  switch (side) {
    case 'top':
      return [
        { x, y },
        { x: right, y },
      ];
    case 'right':
      return [
        { x: right, y },
        { x: right, y: bottom },
      ];
    case 'bottom':
      return [
        { x, y: bottom },
        { x: right, y: bottom },
      ];
    case 'left':
      return [
        { x, y },
        { x, y: bottom },
      ];
  }
}

/** What the marks mean, as far as they are there. */
export function planKey(marks: readonly StandoffMark[]): string {
  const kinds = new Set(marks.map(({ kind }) => kind));
  const said = KEYS.filter(([kind]) => kinds.has(kind)).map(([, words]) => words);
  return `Seen from the front, the thick edge is the rear. ${said.join(' ')}`;
}

const KEYS: readonly (readonly [StandoffMark['kind'], string])[] = [
  ['set', 'Filled: a standoff.'],
  ['empty', 'Crossed: stays empty.'],
  ['off', 'Question mark: near a hole, not under it.'],
  ['without', 'Broken ring: a hole with nothing under it.'],
];
