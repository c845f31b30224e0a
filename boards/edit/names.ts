import type { Build } from '../document/build';
import { connectorOf, leadOf, type PlugRef, plugOf } from '../document/lookup';

/** What a person calls a lead. */
export function leadName(build: Build, lead: string): string {
  return leadOf(build, lead)?.name ?? lead;
}

/** What a person calls a plug: its print, or the name of its lead where it has none. */
export function plugName(build: Build, ref: PlugRef): string {
  return plugOf(build, ref)?.print || leadName(build, ref.lead);
}

/** What a person calls a connector: its print, or what it is. */
export function connectorName(build: Build, id: string): string {
  const connector = connectorOf(build.board, id);
  return connector?.print || connector?.title || id;
}
