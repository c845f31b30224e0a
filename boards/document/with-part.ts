import type { Build } from './build';
import type { Lead, Part } from './lead';

/** The build with a lead put in the place of the one of its id. */
export function withLead(build: Build, lead: Lead): Build {
  const put = (each: Lead) => (each.id === lead.id ? lead : each);
  return {
    ...build,
    case: { ...build.case, leads: build.case.leads.map(put) },
    extras: build.extras.map(put),
  };
}

/** The build with a part of a lead put in the place of the one of its id. */
export function withPart(build: Build, lead: Lead, part: Part): Build {
  return withLead(build, { ...lead, parts: lead.parts.map((each) => (each.id === part.id ? part : each)) });
}
