import { ok, type Result, refuse } from '../../base/result';
import type { CaseSheet } from '../../document/case-sheet';
import type { Lead } from '../../document/lead';
import { LIMITS } from '../../document/limits';
import type { Refusal } from '../refusal';
import type { CaseComparison, LeadRow } from './compare-cases';
import { freeId, type TakeOf, takeFields, tooFull } from './taking';

/**
 * The first sheet with what was chosen of the second, lead by lead. Of two that differ, "both" hangs theirs
 * beside mine: which of two wirings is right can only be seen in the case.
 *
 * @param taken ids of leads elsewhere in the build, which no new lead may have
 */
export function mergeCases(
  { mine, theirs, fields, leads: rows }: CaseComparison,
  takeOf: TakeOf,
  taken: readonly string[] = [],
): Result<CaseSheet, Refusal> {
  const ids = new Set([...taken, ...mine.leads.map(({ id }) => id)]);
  const leads = rows.flatMap((row) => mergeLead(row, takeOf, ids));
  if (leads.length > LIMITS.leads) return refuse({ code: 'full', what: 'leads', limit: LIMITS.leads });
  const merged = { ...takeFields(mine, theirs, fields, takeOf, theirs.name), leads };
  const full = tooFull([merged]);
  return full === null ? ok(merged) : refuse(full);
}

function mergeLead(
  { key, mine, theirs, fields }: LeadRow,
  takeOf: TakeOf,
  ids: Set<string>,
): readonly Lead[] {
  const take = takeOf(key);
  if (theirs === null) return mine === null || take === 'theirs' ? [] : [mine];
  if (mine === null) return take === 'mine' ? [] : [{ ...theirs, id: freeId(theirs.id, ids) }];
  if (fields.length === 0 || take === 'mine') return [mine];
  if (take === 'theirs') return [{ ...theirs, id: mine.id }];
  return [mine, { ...theirs, id: freeId(theirs.id, ids) }];
}
