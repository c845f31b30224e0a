import { CONNECTOR_TYPES } from '../../library/connectors/index';
import { kindIndex, pinKinds } from './pin-kinds';

/** How often each kind is met on connectors of a family, with a little for those never met there. */
export function kindShares(family: string): Float64Array {
  const chances = new Float64Array(pinKinds().length).fill(0.2);
  for (const { connector } of CONNECTOR_TYPES) {
    if (connector.family !== family) continue;
    for (const { signal, missing } of connector.pins) {
      if (missing) continue;
      const kind = kindIndex(signal ?? 'unknown');
      chances[kind] = (chances[kind] ?? 0) + 1;
    }
  }
  const sum = chances.reduce((a, b) => a + b, 0);
  return chances.map((chance) => chance / sum);
}
