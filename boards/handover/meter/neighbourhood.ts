import type { NodeName } from '../../circuit/device';
import { elementsOf } from '../../circuit/elements';
import { type Group, groupsOf } from '../../circuit/groups';
import type { Build } from '../../document/build';
import { jointsOf } from '../../fit/joints';

/** What of a wiring a change or a probe can reach, so that nothing else need be worked out for it. */
export interface Neighbourhood {
  /** Everything that hangs together with one of the nodes, in the order of the wiring. */
  readonly groupsAt: (nodes: readonly NodeName[]) => readonly Group[];
  /**
   * The build with only those leads that hang together with one: to change what this lead is made of, or to
   * take it off, changes what a meter shows nowhere else.
   */
  readonly aroundLead: (lead: string) => Build;
}

export function neighbourhoodOf(build: Build): Neighbourhood {
  const groups = groupsOf(elementsOf(build, jointsOf(build)));
  const byNode = new Map<NodeName, Group>();
  const byLead = new Map<string, Set<Group>>();
  const leadsIn = new Map<Group, Set<string>>();
  for (const group of groups) {
    const leads = new Set<string>();
    leadsIn.set(group, leads);
    for (const { nodes, subject } of group.elements) {
      for (const node of nodes) byNode.set(node, group);
      if (subject.kind === 'pin') continue;
      leads.add(subject.lead);
      const known = byLead.get(subject.lead);
      if (known) known.add(group);
      else byLead.set(subject.lead, new Set([group]));
    }
  }
  const around = new Map<string, Build>();
  return {
    groupsAt: (nodes) => [...new Set(nodes.flatMap((node) => byNode.get(node) ?? []))],
    aroundLead: (lead) => {
      const known = around.get(lead);
      if (known) return known;
      const near = [...(byLead.get(lead) ?? [])].flatMap((group) => [...(leadsIn.get(group) ?? [])]);
      const narrowed = withLeads(build, new Set([lead, ...near]));
      around.set(lead, narrowed);
      return narrowed;
    },
  };
}

function withLeads(build: Build, kept: ReadonlySet<string>): Build {
  return {
    ...build,
    case: { ...build.case, leads: build.case.leads.filter(({ id }) => kept.has(id)) },
    extras: build.extras.filter(({ id }) => kept.has(id)),
    seats: build.seats.filter(({ lead }) => kept.has(lead)),
  };
}
