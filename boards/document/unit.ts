import { z } from 'zod';
import { ConnectorZ } from './connector';
import { LIMITS } from './limits';
import { DriveRatingZ, HubRatingZ } from './rating';
import { IdZ, NameZ, NotesZ } from './text';

/** What a unit is, as far as the wiring depends on it. */
export const UNIT_KINDS = ['supply', 'drive', 'card', 'hub', 'other'] as const;

/**
 * A thing of the machine beside the board that has connectors of its own: the supply unit with its outlets,
 * a drive, a graphics card, a hub for fans. Its connectors are described as those of a board are.
 */
export const UnitZ = z.strictObject({
  id: IdZ,
  name: NameZ,
  kind: z.enum(UNIT_KINDS),
  /** Where it sits: a point, a bay or the supply of the tray; or a place for drives on the board. */
  at: IdZ.optional(),
  /** Ids are their own over the board and all units together, because seats name them. */
  connectors: z.array(ConnectorZ).max(LIMITS.connectorsPerUnit),
  /** Of a drive, where its label was read. */
  drive: DriveRatingZ.optional(),
  /** Of a hub for fans. */
  hub: HubRatingZ.optional(),
  notes: NotesZ.optional(),
});

export type UnitKind = (typeof UNIT_KINDS)[number];
export type Unit = z.infer<typeof UnitZ>;
