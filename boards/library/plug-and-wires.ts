import type { Grid } from '../document/grid';
import type { Plug, Wire, WireColour } from '../document/lead';
import { FAMILY } from './families';

type Extras = Partial<Pick<Plug, 'family' | 'blocked' | 'mark' | 'rib'>>;

/** A plug for open posts, unless "extras" names another family. */
export function plug(id: string, print: string, grid: Grid, extras: Extras = {}): Plug {
  return { id, print, family: FAMILY.pinHeader, grid, ...extras };
}

/** Terminal of the part, hole of the plug, colour and stripe of the wire between them. */
type WireRow = readonly [terminal: string, hole: number, colour: WireColour, stripe?: WireColour];

/** The wires from one part to one plug. */
export function wires(part: string, toPlug: string, rows: readonly WireRow[]): Wire[] {
  return rows.map(([terminal, hole, colour, stripe]) => ({
    from: `${part}.${terminal}`,
    to: `${toPlug}.${hole}`,
    colour,
    ...(stripe && { stripe }),
  }));
}
