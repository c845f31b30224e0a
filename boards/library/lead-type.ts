import type { Lead } from '../document/lead';

/** A lead as the trade sells it, before it belongs to any case. */
export interface LeadType {
  readonly id: string;
  readonly title: string;
  /** Where its plug, its order and its colours are from; no standard fixes most of them. */
  readonly source: string;
  readonly lead: Lead;
}

/** An entry of the library. The lead carries the entry's own id and title until makeLead gives it others. */
export function leadType(
  id: string,
  title: string,
  source: string,
  lead: Omit<Lead, 'id' | 'name'>,
): LeadType {
  return { id, title, source, lead: { id, name: title, ...lead } };
}
