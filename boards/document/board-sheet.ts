import { z } from 'zod';
import { ConnectorZ } from './connector';
import { LIMITS } from './limits';
import { OutlineZ } from './outline';
import { PhotoZ } from './photo';
import { DrivePlaceZ } from './rating';
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
  /** Places for drives without cables (M.2). */
  drivePlaces: z.array(DrivePlaceZ).max(LIMITS.drivePlaces).optional(),
  photos: z.array(PhotoZ).max(LIMITS.photos).optional(),
  notes: NotesZ.optional(),
});

export type BoardSheet = z.infer<typeof BoardSheetZ>;
