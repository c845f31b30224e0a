import type { Volts } from '../../base/units';
import type { Part } from '../../document/lead';
import type { Circuit } from '../circuit';
import type { Span } from '../corner';
import { leadNode, partDeviceId } from '../elements';
import type { MachineState } from '../machine-state';
import { voltsBetween } from './volts-between';

/** Upper limit of USB supply since the 2014 change notice, and the lower one at a high-power port (read in secondary). */
const USB_MOST_VOLTS: Volts = 5.5;
const USB_LEAST_VOLTS: Volts = 4.4;

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

/** The socket that a part is, with the voltage that arrives there; undefined where it is none or not seated. */
export function portSupplyOf(circuit: Circuit, lead: string, part: Part): PortSupply | undefined {
  const supply = SUPPLY[part.kind];
  if (!supply || !circuit.element(partDeviceId(lead, part.id))) return undefined;
  const [plus, minus] = [supply.plus, 'ground'].map((end) => leadNode(lead, `${part.id}.${end}`));
  return {
    lead,
    part: part.id,
    kind: part.kind,
    mostVolts: supply.most,
    leastVolts: supply.least,
    volts: (state) => voltsBetween(circuit, plus, minus, state),
  };
}
