import type { Build } from '../../document/build';
import type { Lead } from '../../document/lead';
import { unitWith } from '../../document/lookup';
import type { SeatedPlug } from '../../fit/seated-plug';
import { plugOnConnector } from '../about';
import type { FindingOf } from '../finding';
import type { Rule } from '../rule';
import { crimpedText } from '../words/remedies';

/**
 * SATA power by an adapter from a four-pin plug is to be looked at before it is trusted.
 *
 * Good: a SATA plug of the supply itself.
 * Bad: an adapter whose SATA end is moulded in one piece: contacts in soft plastic have come to touch, and burnt.
 */
export const adapterMayBurn: Rule<'adapter-may-burn'> = {
  id: 'adapter-may-burn',
  source: 'common practice, no source',
  explains: [],
  check: (context) =>
    context.plugs
      .filter(({ plug, lead }) => plug.family === 'sata-power' && comesFromFourPins(context, lead))
      .map(
        (plug): FindingOf<'adapter-may-burn'> => ({
          code: 'adapter-may-burn',
          severity: 'doubt',
          leads: [plug.lead.id],
          pins: [],
          data: plugOnConnector(plug),
          remedies: [{ text: crimpedText() }],
        }),
      ),
};

/** By a four-pin plug on the same cable, or by a unit with a four-pin socket that the cable is soldered to. */
export function comesFromFourPins(
  {
    build,
    plugs,
  }: { readonly build: Build; readonly plugs: readonly Pick<SeatedPlug, 'lead' | 'connector'>[] },
  lead: Lead,
): boolean {
  if (lead.plugs.some(({ family }) => family === 'peripheral-power')) return true;
  return plugs.some((other) => {
    if (other.lead !== lead) return false;
    const unit = unitWith(build, other.connector.id);
    return unit?.kind === 'hub' && unit.connectors.some(({ family }) => family === 'peripheral-power');
  });
}
