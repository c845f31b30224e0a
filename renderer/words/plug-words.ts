import { listed } from '../../boards/base/listed';
import { rowPitchOf } from '../../boards/document/grid';
import type { Lead, Plug, Wire } from '../../boards/document/lead';
import { type HoleState, holeState, wiresAtHole } from '../../boards/document/lookup';
import { gridIndex } from '../../boards/document/numbering';
import { counted } from './list-words';

/** How many wires are still told one by one. */
const FEW_WIRES = 4;

/** "red", "white with a blue stripe". */
export function colourWords(wire: Pick<Wire, 'colour' | 'stripe'>): string {
  return wire.stripe ? `${wire.colour} with a ${wire.stripe} stripe` : wire.colour;
}

/** One hole of a plug as it is drawn: where, what is in it, which wire. */
export interface Hole {
  readonly label: string;
  readonly row: number;
  readonly col: number;
  readonly state: HoleState;
  readonly wire?: Wire;
}

/** The holes of a plug in counting order. */
export function holesOf(lead: Lead, plug: Plug): readonly Hole[] {
  return gridIndex(plug.grid).positions.map(({ label, cell: [row, col] }) => {
    const wire = wiresAtHole(lead, plug.id, label)[0]?.wire;
    return { label, row, col, state: holeState(lead, plug, label), ...(wire ? { wire } : {}) };
  });
}

/** "2-way", "2 × 5": the positions of a plug or a connector. */
export function shapeWords({ grid: { rows, cols } }: Pick<Plug, 'grid'>): string {
  if (rows === 1 || cols === 1) return `${rows * cols}-way`;
  return `${Math.min(rows, cols)}\u00a0×\u00a0${Math.max(rows, cols)}`;
}

/** "2-way, red and white"; "2 × 5, hole 9 blocked, 8 wires"; "3-way, middle empty, green and white". */
export function plugWords(lead: Lead, plug: Plug): string {
  const holes = holesOf(lead, plug);
  const blocked = holes.filter((hole) => hole.state === 'blocked').map((hole) => hole.label);
  const empty = holes.filter((hole) => hole.state === 'empty').map((hole) => hole.label);
  const wires = holes.flatMap((hole) => (hole.wire ? [hole.wire] : []));
  const pitch = plug.grid.pitchMm;
  return [
    shapeWords(plug),
    pitch === 2.54 && rowPitchOf(plug.grid) === 2.54 ? '' : `${pitch.toFixed(2)}\u00a0mm`,
    blocked.length > 0 ? `${blocked.length > 1 ? 'holes' : 'hole'}\u00a0${listed(blocked)} blocked` : '',
    emptyWords(holes, empty),
    wires.length <= FEW_WIRES ? listed(wires.map(colourWords)) : counted(wires.length, 'wire'),
  ]
    .filter((part) => part !== '')
    .join(', ');
}

function emptyWords(holes: readonly Hole[], empty: readonly string[]): string {
  const middle = holes.length === 3 && empty.length === 1 && holes[1]?.state === 'empty';
  if (middle) return 'middle empty';
  if (empty.length === 0 || empty.length > FEW_WIRES) return '';
  return `${empty.length > 1 ? 'holes' : 'hole'}\u00a0${listed(empty)} empty`;
}

/** "triangle at hole 1", where the plug has a mark. */
export function markWords(plug: Plug): string {
  return plug.mark === undefined ? '' : `marked at hole\u00a0${plug.mark}`;
}

/** What a plug is called in a list: its lead, and its own print where the lead has several. */
export function plugTitle(lead: Lead, plug: Plug): string {
  if (lead.plugs.length === 1 || plug.print === lead.name) return lead.name;
  return plug.print === '' ? `${lead.name}, plug ${plug.id}` : `${lead.name}, ${plug.print}`;
}
