import { byIdentity } from '../base/by-identity';
import type { Build, Seat } from '../document/build';
import type { Connector, Pin } from '../document/connector';
import { type Lead, type Part, type Plug, splitEnd, type Wire } from '../document/lead';
import { wiresAtHole } from '../document/lookup';
import type { Terminal } from '../signals/part-kind';
import { type PartKindId, partKindOf } from '../signals/part-kinds';
import type { Landing } from './fit';
import { landingsOf, meetsPin } from './landing';
import { type SeatedPlug, seatedPlugs, wiringOf } from './seated-plug';

/** One wire end at a contact of a seated plug, what it touches, and where the wire comes from. */
export interface Joint {
  readonly seat: Seat;
  readonly lead: Lead;
  readonly plug: Plug;
  readonly hole: string;
  readonly landing: Landing;
  readonly connector: Connector;
  /** The pin that the contact touches; undefined over a gap and past the edge. */
  readonly pin?: Pin;
  /** The part and its terminal at the wire's other end; undefined where that is another plug. */
  readonly part?: Part;
  readonly terminal?: Terminal;
  readonly wire: Wire;
}

/** Every joint of a build: by seat, then by hole, then by wire. */
export const jointsOf = byIdentity(
  (build: Build): readonly Joint[] => seatedPlugs(build).flatMap(jointsOfPlug),
  wiringOf,
);

/** The joints of one plug as it sits. */
export function jointsOfPlug(seated: SeatedPlug): readonly Joint[] {
  const { seat, lead, plug, connector } = seated;
  return landingsOf(seated).flatMap((landing) => {
    if (landing.state !== 'contact') return [];
    const pin = meetsPin(landing) ? landing.pin : undefined;
    return wiresAtHole(lead, plug.id, landing.hole).map(
      ({ wire, farEnd }): Joint => ({
        seat,
        lead,
        plug,
        hole: landing.hole,
        landing,
        connector,
        ...(pin && { pin }),
        ...terminalAt(lead, farEnd),
        wire,
      }),
    );
  });
}

function terminalAt(lead: Lead, end: string): { part: Part; terminal: Terminal } | undefined {
  const { owner, point } = splitEnd(end);
  const part = lead.parts.find((each) => each.id === owner);
  const terminal = part && terminalOf(part.kind, point);
  return part && terminal ? { part, terminal } : undefined;
}

function terminalOf(kind: PartKindId, id: string): Terminal | undefined {
  const terminals: readonly Terminal[] = partKindOf(kind).terminals;
  return terminals.find((terminal) => terminal.id === id);
}
