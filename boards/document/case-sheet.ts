import { z } from 'zod';
import { LeadZ } from './lead';
import { LIMITS } from './limits';
import { IdZ, NameZ, NotesZ, SchemaAddressZ } from './text';
import { TrayZ } from './tray';

/** What is known of one case: its leads, and the tray with the ways that cables can take. */
export const CaseSheetZ = z.strictObject({
  $schema: SchemaAddressZ.optional(),
  format: z.literal('leadwright/case'),
  version: z.literal(1),
  id: IdZ,
  name: NameZ,
  leads: z.array(LeadZ).max(LIMITS.leads),
  tray: TrayZ.optional(),
  notes: NotesZ.optional(),
});

export type CaseSheet = z.infer<typeof CaseSheetZ>;
