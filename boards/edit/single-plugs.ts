import type { Grid } from '../document/grid';
import { type Lead, type Plug, splitEnd } from '../document/lead';
import { LIMITS } from '../document/limits';
import { holeState, wiresAtHole } from '../document/lookup';
import { gridIndex } from '../document/numbering';
import { partKindOf } from '../signals/part-kinds';

/** A single-hole plug made from one contact of a block. */
interface Single {
  /** The hole of the block that the contact came from. */
  readonly hole: string;
  readonly plug: Plug;
  /** The wire end that it is now. */
  readonly end: string;
}

const ONLY_HOLE = '1';

/** One single-hole plug for each contact of a block, in the order of its holes. Pitch and marks are kept. */
export function singlesOf(lead: Lead, plug: Plug): readonly Single[] {
  const freeId = idsAfter(lead, plug);
  const grid: Grid = {
    rows: 1,
    cols: 1,
    pitchMm: plug.grid.pitchMm,
    numbering: { scheme: 'by-row', from: 'top-left' },
  };
  return gridIndex(plug.grid)
    .positions.filter(({ label }) => holeState(lead, plug, label) === 'contact')
    .map(({ label }) => {
      const id = freeId();
      const single: Plug = { id, print: printOf(lead, plug, label), family: plug.family, grid };
      const marked = plug.mark === label ? { ...single, mark: ONLY_HOLE } : single;
      return { hole: label, plug: marked, end: `${id}.${ONLY_HOLE}` };
    });
}

/** Gives "panel-1", "panel-2" and so on, passing over ids that the lead has already. */
function idsAfter(lead: Lead, plug: Plug): () => string {
  const taken = new Set([...lead.parts, ...lead.plugs].map(({ id }) => id));
  const stem = plug.id.slice(0, LIMITS.idLength - 5).replace(/-$/, '');
  let count = 0;
  return () => {
    do count += 1;
    while (taken.has(`${stem}-${count}`));
    return `${stem}-${count}`;
  };
}

/** What a person would write on the single plug: whose wire it is and which, "POWER LED +". */
function printOf(lead: Lead, plug: Plug, hole: string): string {
  const [first] = wiresAtHole(lead, plug.id, hole);
  const { owner, point } = splitEnd(first?.farEnd ?? '');
  const part = lead.parts.find(({ id }) => id === owner);
  if (part === undefined) return cut(`${plug.print} ${hole}`);
  const kind = partKindOf(part.kind);
  const whose = lead.parts.length === 1 ? plug.print || lead.name : (part.name ?? kind.name);
  const which = kind.terminals.find(({ id }) => id === point)?.name ?? point;
  return cut(`${whose} ${which}`);
}

function cut(text: string): string {
  return text.trim().slice(0, LIMITS.textLength);
}
