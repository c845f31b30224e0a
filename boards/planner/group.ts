import type { Build, Seat } from '../document/build';
import type { Lead, Plug } from '../document/lead';
import { leadsOf, type PlugRef, partsOf, plugKey, seatOf, unitWith } from '../document/lookup';

/** Plugs of one lead that are decided together, since a part has wires in more than one of them. */
export interface Group {
  readonly lead: Lead;
  readonly plugs: readonly Plug[];
  /** Plugs that keep the seat they have. */
  readonly pinned: ReadonlyMap<string, Seat>;
}

/**
 * What is to be seated: the plugs that parts hang on, of every lead that is not set aside. A pinned plug
 * that sits keeps its seat; one that sits nowhere is planned like any other. What a person put on a unit, a fan
 * on a hub, stays there: the plan is one for the board.
 */
export function groupsOf(build: Build, pinned: readonly PlugRef[]): readonly Group[] {
  const keep = new Set(pinned.map(plugKey));
  return leadsOf(build)
    .filter(({ setAside }) => setAside !== true)
    .flatMap((lead) =>
      togetherIn(lead)
        .filter((plugs) => !plugs.some((plug) => isOnUnit(build, { lead: lead.id, plug: plug.id })))
        .map((plugs) => ({
          lead,
          plugs,
          pinned: new Map(
            plugs.flatMap((plug): [string, Seat][] => {
              const seat = seatOf(build, { lead: lead.id, plug: plug.id });
              return seat && keep.has(plugKey({ lead: lead.id, plug: plug.id })) ? [[plug.id, seat]] : [];
            }),
          ),
        })),
    );
}

function isOnUnit(build: Build, ref: PlugRef): boolean {
  const seat = seatOf(build, ref);
  return seat !== undefined && unitWith(build, seat.connector) !== undefined;
}

/** The plugs of a lead by the parts they share, in their own order; those without a part are left out. */
function togetherIn(lead: Lead): readonly (readonly Plug[])[] {
  const groups: { plugs: Set<string>; parts: Set<string> }[] = [];
  for (const plug of lead.plugs) {
    const parts = partsOf(lead, plug);
    if (parts.size === 0) continue;
    const joined = { plugs: new Set([plug.id]), parts: new Set(parts) };
    for (const group of groups.filter((each) => [...each.parts].some((part) => parts.has(part)))) {
      for (const id of group.plugs) joined.plugs.add(id);
      for (const id of group.parts) joined.parts.add(id);
      groups.splice(groups.indexOf(group), 1);
    }
    groups.push(joined);
  }
  return groups.map(({ plugs }) => lead.plugs.filter(({ id }) => plugs.has(id)));
}
