import { z } from 'zod';
import { ConnectorZ } from './connector';
import { LIMITS } from './limits';
import { IdZ, NameZ, NotesZ, SchemaAddressZ } from './text';

const SideZ = z.number().positive().max(1_000);

/** What is known of one board. */
export const BoardSheetZ = z.strictObject({
  $schema: SchemaAddressZ.optional(),
  format: z.literal('leadwright/board'),
  version: z.literal(1),
  id: IdZ,
  name: NameZ,
  outline: z.strictObject({ widthMm: SideZ, depthMm: SideZ }),
  connectors: z.array(ConnectorZ).max(LIMITS.connectors),
  notes: NotesZ.optional(),
});

export type BoardSheet = z.infer<typeof BoardSheetZ>;
