import type { Build } from './build';
import { anyConnectorOf, leadOf, type PlugRef, photoOf, plugOf, unitOf, unitWith } from './lookup';

/** What a person calls a lead. */
export function leadName(build: Build, lead: string): string {
  return leadOf(build, lead)?.name ?? lead;
}

/** What a person calls a plug: its print, or the name of its lead where it has none. */
export function plugName(build: Build, ref: PlugRef): string {
  return plugOf(build, ref)?.print || leadName(build, ref.lead);
}

/** What a person calls a connector: its print, or what it is; of a unit with the unit's name. */
export function connectorName(build: Build, id: string): string {
  const name = ownName(build, id);
  const unit = unitWith(build, id);
  return unit === undefined ? name : `${name} of ${unit.name}`;
}

/** The same of a connector, without the unit that it is on. */
export function ownName(build: Build, id: string): string {
  const connector = anyConnectorOf(build, id);
  return connector?.print || connector?.title || id;
}

/** What a person calls a supply, a drive, a card or a hub. */
export function unitName(build: Build, id: string): string {
  return unitOf(build, id)?.name ?? id;
}

/** What a person calls a photo of the board: its title, or its id where it has none. */
export function photoName(build: Build, id: string): string {
  return photoOf(build.board, id)?.title || id;
}
