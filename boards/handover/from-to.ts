import type { Build } from '../document/build';
import { connectorName, leadName, plugName } from '../document/names';
import { jointsOf } from '../fit/joints';
import { partKindOf } from '../signals/part-kinds';
import { signalOf } from '../signals/signals';

/** One wire end on the board: from what in the case to which pin. The columns of a from-to list. */
export interface FromTo {
  readonly lead: string;
  /** What the wire comes from: a part and its leg; empty where that is another plug. */
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

/** Every wire end that a seated plug brings to the board: by seat, then by hole. */
export function fromToOf(build: Build): readonly FromTo[] {
  return jointsOf(build).map(({ lead, plug, hole, wire, connector, pin, part, terminal }) => {
    const leg = part && terminal ? `${part.name ?? partKindOf(part.kind).name} ${terminal.name}` : '';
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
