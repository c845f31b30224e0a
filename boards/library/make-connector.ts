import type { Connector } from '../document/connector';
import { connectorTypeOf } from './connectors/index';

/**
 * A library connector put on a board: its own id, print and place (millimetres), the rest from the
 * library. An id that the library lacks is a bug of the caller and throws; ids come from its own list.
 */
export function makeConnector(
  typeId: string,
  onBoard: Pick<Connector, 'id' | 'print' | 'place'> & { readonly title?: string },
): Connector {
  return { ...connectorTypeOf(typeId).connector, ...onBoard };
}
