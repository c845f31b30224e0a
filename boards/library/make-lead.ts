import type { Lead } from '../document/lead';
import { LEAD_TYPES } from './leads/index';

/**
 * A library lead in a case: its own id and name, the rest from the library. An id that the library
 * lacks is a bug of the caller and throws; ids come from its own list.
 */
export function makeLead(
  typeId: string,
  inCase: Pick<Lead, 'id' | 'name'> & Pick<Partial<Lead>, 'notes'>,
): Lead {
  const type = LEAD_TYPES.find((candidate) => candidate.id === typeId);
  if (type === undefined) throw new Error(`No lead type ${typeId} in the library`);
  return { ...type.lead, ...inCase };
}
