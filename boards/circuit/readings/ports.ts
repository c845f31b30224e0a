import type { Volts } from '../../base/units';
import type { Build } from '../../document/build';
import type { Part } from '../../document/lead';
import { leadsOf } from '../../document/lookup';
import type { Circuit } from '../circuit';
import { type Span, spanOf } from '../corner';
import { leadNode, partDeviceId } from '../elements';
import type { MachineState } from '../machine-state';

/** Upper limit of USB supply since the 2014 change notice, and the lower one at a high-power port (read in secondary). */
export const USB_MOST_VOLTS: Volts = 5.5;
export const USB_LEAST_VOLTS: Volts = 4.4;

const SUPPLY: Partial<
  Record<Part['kind'], { readonly plus: string; readonly most: Volts; readonly least: Volts }>
> = {
  'usb2-port': { plus: 'vbus', most: USB_MOST_VOLTS, least: USB_LEAST_VOLTS },
  'usb3-port': { plus: 'vbus', most: USB_MOST_VOLTS, least: USB_LEAST_VOLTS },
  'usb-c-port': { plus: 'vbus', most: USB_MOST_VOLTS, least: USB_LEAST_VOLTS },
  'ieee1394-port': { plus: 'power', most: 33, least: 8 },
  fan: { plus: 'supply', most: 12.6, least: 4 },
};

/** What a socket at the front would give to whatever is plugged into it. */
export interface PortSupply {
  readonly lead: string;
  readonly part: string;
  readonly kind: Part['kind'];
  readonly mostVolts: Volts;
  readonly leastVolts: Volts;
  /** Plus against ground at the socket; undefined where either hangs in the air. */
  readonly volts: (state: MachineState) => Span | undefined;
}

/** Every port and fan of a seated lead, with the voltage that arrives there. */
export function portSupplies(build: Build, circuit: Circuit): readonly PortSupply[] {
  const present = new Set(circuit.elements.map(({ id }) => id));
  return leadsOf(build).flatMap((lead) =>
    lead.parts.flatMap((part): PortSupply[] => {
      const supply = SUPPLY[part.kind];
      if (!supply || !present.has(partDeviceId(lead.id, part.id))) return [];
      const [plus, minus] = [supply.plus, 'ground'].map((end) => leadNode(lead.id, `${part.id}.${end}`));
      return [
        {
          lead: lead.id,
          part: part.id,
          kind: part.kind,
          mostVolts: supply.most,
          leastVolts: supply.least,
          volts: (state) => between(circuit, plus ?? '', minus ?? '', state),
        },
      ];
    }),
  );
}

function between(circuit: Circuit, plus: string, minus: string, state: MachineState): Span | undefined {
  let open = false;
  const span = spanOf((corner) => {
    const [high, low] = [circuit.volts(plus, state, corner), circuit.volts(minus, state, corner)];
    if (high === undefined || low === undefined) open = true;
    return (high ?? 0) - (low ?? 0);
  });
  return open ? undefined : span;
}
