import type { Mm } from '../../boards/base/units';
import type { Connector } from '../../boards/document/connector';
import { connectorBox } from '../../boards/fit/geometry';

/** Room for the names round a connector. */
const SPACE_MM = 14;

/** How far down a new connector can stand without meeting another; the person moves it to its place then. */
export function freeRow(connectors: readonly Connector[]): Mm {
  const lowest = connectors.reduce((low, each) => Math.max(low, connectorBox(each).bottomMm), 0);
  return Math.round(Math.min(990, lowest + SPACE_MM));
}
