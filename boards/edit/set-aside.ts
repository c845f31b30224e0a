import type { Lead } from '../document/lead';

/** The lead in use again: one that is seated is no longer left off. */
export function unaside(lead: Lead): Lead {
  const { setAside, ...rest } = lead;
  return setAside ? rest : lead;
}
