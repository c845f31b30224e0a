import type { Build } from './build';
import { connectorOf, leadOf, type PlugRef, photoOf, plugOf } from './lookup';

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

/** What a person calls a photo of the board: its title, or its id where it has none. */
export function photoName(build: Build, id: string): string {
  return photoOf(build.board, id)?.title || id;
}
