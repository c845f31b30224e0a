import { z } from 'zod';
import { ConnectorZ } from './connector';
import { LIMITS } from './limits';
import { OutlineZ } from './outline';
import { PhotoZ } from './photo';
import { IdZ, NameZ, NotesZ, SchemaAddressZ } from './text';

/** What is known of one board. */
export const BoardSheetZ = z.strictObject({
  $schema: SchemaAddressZ.optional(),
  format: z.literal('leadwright/board'),
  version: z.literal(1),
  id: IdZ,
  name: NameZ,
  outline: OutlineZ,
  connectors: z.array(ConnectorZ).max(LIMITS.connectors),
  photos: z.array(PhotoZ).max(LIMITS.photos).optional(),
  notes: NotesZ.optional(),
});

export type BoardSheet = z.infer<typeof BoardSheetZ>;
