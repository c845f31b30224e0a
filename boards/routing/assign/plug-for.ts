import { TURNS } from '../../base/units';
import type { Connector } from '../../document/connector';
import type { Lead, Plug } from '../../document/lead';
import { entryRefusals } from '../../fit/entry';

/** The first plug of a lead that enters a connector by its shape, whatever is there; undefined where none does. */
export function plugFor({ plugs }: Lead, connector: Connector): Plug | undefined {
  return plugs.find((plug) => enters(plug, connector));
}

export function enters(plug: Plug, connector: Connector): boolean {
  return TURNS.some((turn) => entryRefusals(plug, connector, turn).length === 0);
}
