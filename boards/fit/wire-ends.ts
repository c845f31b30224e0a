import { byIdentity } from '../base/by-identity';
import { type Lead, type Part, type Plug, splitEnd, type Wire } from '../document/lead';
import { wiresAtHole } from '../document/lookup';
import type { Terminal } from '../signals/part-kind';
import { partKindOf } from '../signals/part-kinds';

/** One wire end in a plug, and what the wire comes from. */
export interface WireEnd {
  readonly wire: Wire;
  /** The part and its terminal at the other end; undefined where that is another plug. */
  readonly part?: Part;
  readonly terminal?: Terminal;
}

/** The wires that end in a hole of a plug, in the order of the lead's wires. */
export function wireEndsAt(lead: Lead, plug: Plug, hole: string): readonly WireEnd[] {
  const known = endsOf({ lead, plug });
  const before = known.get(hole);
  if (before) return before;
  const ends = wiresAtHole(lead, plug.id, hole).map(({ wire, farEnd }) => ({
    wire,
    ...terminalAt(lead, farEnd),
  }));
  known.set(hole, ends);
  return ends;
}

/** A plug is laid on many places: its wires are the same on each. */
const endsOf = byIdentity(
  (_: { readonly lead: Lead; readonly plug: Plug }) => new Map<string, readonly WireEnd[]>(),
  ({ lead, plug }) => [lead, plug],
);

function terminalAt(lead: Lead, end: string): Pick<WireEnd, 'part' | 'terminal'> {
  const { owner, point } = splitEnd(end);
  const part = lead.parts.find((each) => each.id === owner);
  if (part === undefined) return {};
  const terminals: readonly Terminal[] = partKindOf(part.kind).terminals;
  const terminal = terminals.find(({ id }) => id === point);
  return terminal ? { part, terminal } : {};
}
