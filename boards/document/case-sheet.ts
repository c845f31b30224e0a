import { z } from 'zod';
import { LeadZ } from './lead';
import { LIMITS } from './limits';
import { IdZ, NameZ, NotesZ, SchemaAddressZ } from './text';

/** What is known of one case: its leads. Tray, openings and paths join it with routing. */
export const CaseSheetZ = z.strictObject({
  $schema: SchemaAddressZ.optional(),
  format: z.literal('leadwright/case'),
  version: z.literal(1),
  id: IdZ,
  name: NameZ,
  leads: z.array(LeadZ).max(LIMITS.leads),
  notes: NotesZ.optional(),
});

export type CaseSheet = z.infer<typeof CaseSheetZ>;
