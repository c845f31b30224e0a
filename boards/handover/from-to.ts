import type { Build } from '../document/build';
import type { Wire } from '../document/lead';
import { connectorName, leadName, plugName } from '../document/names';
import { type Joint, jointsOf } from '../fit/joints';
import { partKindOf } from '../signals/part-kinds';
import { signalOf } from '../signals/signals';

/** One wire end on the board or on a unit: from what in the case to which pin. The columns of a from-to list. */
export interface FromTo {
  readonly lead: string;
  /** What the wire comes from: a part and its leg, or the pin at its other end; empty where that end lies loose. */
  readonly from: string;
  readonly colour: string;
  readonly plug: string;
  readonly hole: string;
  readonly connector: string;
  /** Empty where the contact lies over no pin. */
  readonly pin: string;
  readonly signal: string;
  /** As the manual calls the pin. */
  readonly name: string;
}

/** The columns in their order, each with its heading. */
export const FROM_TO_COLUMNS = [
  ['lead', 'Lead'],
  ['from', 'From'],
  ['colour', 'Wire'],
  ['plug', 'Plug'],
  ['hole', 'Hole'],
  ['connector', 'Connector'],
  ['pin', 'Pin'],
  ['signal', 'Signal'],
  ['name', 'Name in the manual'],
] as const satisfies readonly (readonly [keyof FromTo, string])[];

/** Every wire end that a seated plug brings to the board or to a unit: by seat, then by hole. */
export function fromToOf(build: Build): readonly FromTo[] {
  const ends = new Map<Wire, Joint[]>();
  for (const joint of jointsOf(build)) ends.set(joint.wire, [...(ends.get(joint.wire) ?? []), joint]);
  return jointsOf(build).map((joint) => {
    const { lead, plug, hole, wire, connector, pin, part, terminal } = joint;
    const other = ends.get(wire)?.find((each) => each !== joint);
    const leg =
      part && terminal
        ? `${part.name ?? partKindOf(part.kind).name} ${terminal.name}`
        : other?.pin
          ? `${connectorName(build, other.connector.id)} pin ${other.pin.pin}`
          : '';
    return {
      lead: leadName(build, lead.id),
      from: leg,
      colour: wire.stripe ? `${wire.colour}/${wire.stripe}` : wire.colour,
      plug: plugName(build, { lead: lead.id, plug: plug.id }),
      hole,
      connector: connectorName(build, connector.id),
      pin: pin?.pin ?? '',
      signal: pin ? signalOf(pin.signal ?? 'unknown').name : '',
      name: pin?.name ?? '',
    };
  });
}
