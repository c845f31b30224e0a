import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Lead } from '../../document/lead';
import { leadsOf } from '../../document/lookup';
import { isCap } from '../../routing/laid/cable-family';
import { endName, endNames, runName } from '../../routing/laid/end-names';

/** What stands on the label at one end of a cable. */
export interface LabelText {
  readonly cable: string;
  /** Where this end goes. */
  readonly here: string;
  readonly other: string;
  /** How thick the cable is that a flag is folded round; undefined where nobody has measured. */
  readonly diameterMm?: Mm;
}

/**
 * A label for both ends of each cable: of every run that was measured, and of every other lead from its first
 * end to each of its others. Leads that were left off, and caps, get none.
 */
export function labelTexts(build: Build): readonly LabelText[] {
  return leadsOf(build)
    .filter((lead) => lead.setAside === undefined && !isCap(lead))
    .flatMap((lead) => pairsOf(build, lead))
    .flatMap(({ cable, near, far, diameterMm }): readonly LabelText[] => {
      const thick = diameterMm === undefined ? {} : { diameterMm };
      return [
        { cable, here: near, other: far, ...thick },
        { cable, here: far, other: near, ...thick },
      ];
    });
}

interface Pair {
  readonly cable: string;
  readonly near: string;
  readonly far: string;
  readonly diameterMm?: Mm;
}

function pairsOf(build: Build, lead: Lead): readonly Pair[] {
  const { cable, parts, plugs } = lead;
  if (cable !== undefined)
    return cable.runs.map((run) => {
      const [near, far] = endNames(build, lead, run);
      return { cable: runName(build, lead, run), near, far, diameterMm: cable.diameterMm };
    });
  const [first, ...others] = plugs;
  if (first === undefined) return [];
  if (parts.length > 0)
    return plugs.map(({ id }) => ({
      cable: lead.name,
      near: endName(build, lead, undefined),
      far: endName(build, lead, id),
    }));
  return others.map(({ id }) => ({
    cable: lead.name,
    near: endName(build, lead, first.id),
    far: endName(build, lead, id),
  }));
}
