import { PANEL_PARTS } from './panel-parts';
import type { PartKind } from './part-kind';
import { PORT_PARTS } from './port-parts';

/** Everything that stands at the far end of a lead: what each of its wires is for. */
export const PART_KINDS = [...PANEL_PARTS, ...PORT_PARTS] as const satisfies readonly PartKind[];

export type PartKindId = (typeof PART_KINDS)[number]['id'];

export const PART_KIND_IDS: readonly PartKindId[] = PART_KINDS.map((kind) => kind.id);

const byId: ReadonlyMap<PartKindId, PartKind> = new Map(PART_KINDS.map((kind) => [kind.id, kind]));

/** The row of a part kind. Every id has one. */
export function partKindOf(id: PartKindId): PartKind {
  const kind = byId.get(id);
  if (kind === undefined) throw new Error(`No part kind ${id}`);
  return kind;
}
