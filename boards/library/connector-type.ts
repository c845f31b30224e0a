import type { Connector } from '../document/connector';
import { FAMILY } from './families';

/** A connector as the trade knows it, before it stands anywhere on a board. */
export interface ConnectorType {
  readonly id: string;
  readonly title: string;
  /** The papers behind it, best first; what is only recalled says so. */
  readonly sources: readonly string[];
  readonly connector: Omit<Connector, 'id' | 'print' | 'place'>;
}

/** An entry of the library, its pins in counting order. Sources: those its pins name, then "further" ones. */
export function connectorType(
  id: string,
  connector: ConnectorType['connector'],
  further: readonly string[] = [],
): ConnectorType {
  const pins = [...connector.pins].sort((a, b) => Number(a.pin) - Number(b.pin));
  const named = pins.flatMap((pin) => pin.source?.where ?? []);
  return {
    id,
    title: connector.title,
    sources: [...new Set([...named, ...further])],
    connector: { ...connector, pins },
  };
}

/** Open posts at 2.54 mm, of whose papers hardly any gives the pitch. */
export function openHeader(
  id: string,
  connector: Omit<ConnectorType['connector'], 'family'>,
  further: readonly string[] = ['pitch 2.54 mm (from memory)'],
): ConnectorType {
  return connectorType(id, { ...connector, family: FAMILY.pinHeader }, further);
}
