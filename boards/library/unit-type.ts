import type { Seat } from '../document/build';
import type { Connector } from '../document/connector';
import type { Lead } from '../document/lead';
import type { Unit, UnitKind } from '../document/unit';

/** A supply, drive, card or hub as the trade knows it, before it is in any machine. */
export interface UnitType {
  readonly id: string;
  readonly title: string;
  /** Where its connectors and cables are from; no standard fixes the supply's own end of a cable. */
  readonly source: string;
  readonly unit: Omit<Unit, 'id' | 'name'>;
  /** The cables in its box, with ids of their own among themselves. */
  readonly cables: readonly Lead[];
  /** Where they sit already, because they cannot be unplugged. */
  readonly seats: readonly Seat[];
}

/** An entry of the library. Its connectors stand side by side, since nobody has to measure where. */
export function unitType(
  id: string,
  title: string,
  source: string,
  kind: UnitKind,
  connectors: readonly Omit<Connector, 'place'>[],
  more: Partial<Pick<UnitType, 'cables' | 'seats'>> & Pick<Unit, 'notes'> = {},
): UnitType {
  const { cables = [], seats = [], notes } = more;
  return {
    id,
    title,
    source,
    unit: { kind, connectors: connectors.map(inRow), ...(notes !== undefined && { notes }) },
    cables,
    seats,
  };
}

/** Far enough apart that no plug on one is in the way of one on the next. */
const APART_MM = 40;

function inRow(connector: Omit<Connector, 'place'>, at: number): Connector {
  return { ...connector, place: { xMm: 10, yMm: 10 + at * APART_MM, turn: 0 } };
}
