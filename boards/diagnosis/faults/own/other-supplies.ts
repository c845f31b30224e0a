import type { Cell } from '../../../document/grid';
import { type Lead, type Plug, splitEnd, type Wire } from '../../../document/lead';
import { gridIndex } from '../../../document/numbering';
import { UNIT_TYPES } from '../../../library/units/index';

/**
 * A cable as other supplies have it: the same plugs, and other wires between them. Those of the supplies of the
 * library, and the cable's own order as a maker has it who counts from the other row or the other end: common
 * practice, no source.
 *
 * @param near the id of the plug at the supply
 */
export function cablesOfOthers(lead: Lead, near: string): readonly Lead[] {
  const plug = lead.plugs.find(({ id }) => id === near);
  if (plug === undefined) return [];
  const orders = [...ordersOfLibrary(lead, plug), ...ordersAcross(lead, plug)];
  const own = keyOf(lead.wires);
  const others = new Map(orders.map((wires) => [keyOf(wires), wires]));
  return [...others].flatMap(([key, wires]) => (key === own ? [] : [{ ...lead, wires: [...wires] }]));
}

/** Where each wire goes, whatever its colour and whichever end is told first. */
function keyOf(wires: readonly Wire[]): string {
  return wires
    .map(({ from, to }) => [from, to].sort().join('>'))
    .sort()
    .join();
}

const CABLES: readonly Lead[] = UNIT_TYPES.filter(({ unit }) => unit.kind === 'supply').flatMap(
  ({ cables }) => cables,
);

function ordersOfLibrary(lead: Lead, near: Plug): readonly (readonly Wire[])[] {
  return CABLES.flatMap((cable) => {
    const [there, ...ends] = cable.plugs;
    if (there === undefined || !isAlike(there, near)) return [];
    const wires = lead.plugs.flatMap((plug): readonly Wire[] | undefined => {
      if (plug === near) return [];
      const end = ends.find((each) => isAlike(each, plug));
      return end && between(cable, there.id, end.id, near.id, plug.id);
    });
    return wires.includes(undefined) ? [] : [wires.flatMap((wire) => wire ?? [])];
  });
}

function isAlike(one: Plug, other: Plug): boolean {
  return (
    one.family === other.family && one.grid.rows === other.grid.rows && one.grid.cols === other.grid.cols
  );
}

/** The wires of a cable between two of its plugs, told of two others. */
function between(cable: Lead, near: string, far: string, asNear: string, asFar: string): readonly Wire[] {
  return cable.wires.flatMap(({ from, to, ...wire }) => {
    const [hole, contact] = [holeIn(near, from), holeIn(far, to)];
    return hole && contact ? [{ ...wire, from: `${asNear}.${hole}`, to: `${asFar}.${contact}` }] : [];
  });
}

function holeIn(plug: string, end: string): string | undefined {
  const { owner, point } = splitEnd(end);
  return owner === plug ? point : undefined;
}

/** The cell that a cell is seen as from the other row, from the other end, or both. */
const MIRRORED: readonly ((cell: Cell, last: Cell) => Cell)[] = [
  ([row, col], [lastRow]) => [lastRow - row, col],
  ([row, col], [, lastCol]) => [row, lastCol - col],
  ([row, col], [lastRow, lastCol]) => [lastRow - row, lastCol - col],
];

function ordersAcross(lead: Lead, { id, grid }: Plug): readonly (readonly Wire[])[] {
  const { cellOf, labelAt } = gridIndex(grid);
  return MIRRORED.map((mirrored) => {
    const moved = (end: string): string => {
      const hole = holeIn(id, end);
      const cell = hole === undefined ? undefined : cellOf(hole);
      const label = cell && labelAt(mirrored(cell, [grid.rows - 1, grid.cols - 1]));
      return label === undefined ? end : `${id}.${label}`;
    };
    return lead.wires.map((wire) => ({ ...wire, from: moved(wire.from), to: moved(wire.to) }));
  });
}
