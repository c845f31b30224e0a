import type { Connector, Pin } from '../document/connector';
import type { Cell } from '../document/grid';
import { holeState, pinAt } from '../document/lookup';
import { gridIndex } from '../document/numbering';
import type { Landing } from './fit';
import { cellUnder } from './geometry';
import type { SeatedPlug } from './seated-plug';

/** What lies under every hole of a plug, in the order in which its holes are counted. */
export function landingsOf({ seat, lead, plug, connector }: SeatedPlug): readonly Landing[] {
  return gridIndex(plug.grid).positions.map(({ label, cell }) => {
    const under = cellUnder(seat, cell);
    const pin = pinAt(connector, under);
    const landing = { hole: label, state: holeState(lead, plug, label), cell: under };
    return pin ? { ...landing, pin } : landing;
  });
}

/** Whether a pin stands under the hole: neither a gap nor past the edge. */
export function meetsPin(landing: Landing): boolean {
  return landing.pin !== undefined && landing.pin.missing !== true;
}

/** The pin that stands in a cell; undefined over a gap and past the edge. */
export function standingPinAt(connector: Connector, cell: Cell): Pin | undefined {
  const pin = pinAt(connector, cell);
  return pin?.missing === true ? undefined : pin;
}
