import type { CaseSheet } from '../../document/case-sheet';
import type { Lead } from '../../document/lead';
import { type SheetRow, sheetRows } from './compare-boards';
import { differingFields } from './differing-fields';

/** One lead in two sheets. */
export interface LeadRow {
  readonly key: string;
  readonly mine: Lead | null;
  readonly theirs: Lead | null;
  /** The names of what differs: "name", "plugs", "wires" and so on. None: the same. */
  readonly fields: readonly string[];
}

/** Two case sheets, laid over each other. */
export interface CaseComparison {
  readonly mine: CaseSheet;
  readonly theirs: CaseSheet;
  readonly fields: readonly SheetRow[];
  readonly leads: readonly LeadRow[];
}

/** Lays two sheets of a case over each other. Leads are the same by id, or else by a name that each has once. */
export function compareCases(mine: CaseSheet, theirs: CaseSheet): CaseComparison {
  const left = new Set(theirs.leads);
  const partnerOf = new Map<Lead, Lead>();
  for (const sign of [
    (lead: Lead) => `${lead.id} ${lead.name}`,
    ({ id }: Lead) => id,
    ({ name }: Lead) => name,
  ]) {
    const free = mine.leads.filter((lead) => !partnerOf.has(lead));
    for (const lead of free) {
      const [partner, ...others] = [...left].filter((other) => sign(other) === sign(lead));
      const rivals = free.filter((other) => sign(other) === sign(lead));
      if (partner === undefined || others.length > 0 || rivals.length > 1) continue;
      partnerOf.set(lead, partner);
      left.delete(partner);
    }
  }
  return {
    mine,
    theirs,
    fields: sheetRows(mine, theirs),
    leads: [
      ...mine.leads.map((lead) => leadRow(lead, partnerOf.get(lead) ?? null)),
      ...[...left].map((lead) => leadRow(null, lead)),
    ],
  };
}

function leadRow(mine: Lead | null, theirs: Lead | null): LeadRow {
  const key = `lead ${mine?.id ?? `+${theirs?.id}`}`;
  const fields = mine !== null && theirs !== null ? differingFields(mine, theirs, ['id']) : ['lead'];
  return { key, mine, theirs, fields };
}
