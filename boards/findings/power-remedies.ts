import type { Build } from '../document/build';
import type { Connector } from '../document/connector';
import { type PlugRef, unitWith } from '../document/lookup';
import { placesOf } from '../fit/places';
import type { CheckContext, CheckedPlug } from './context';
import type { Remedy } from './finding';
import { moveText, ownCableText } from './words/remedies';

/** For a cable that brings the wrong rails: off with the end that sits on a supply, or with this one. */
export function cableRemedy({ build, plugs }: CheckContext, ref: PlugRef): readonly Remedy[] {
  const args = plugAtSupply({ build, plugs }, ref.lead)?.ref ?? ref;
  return [{ text: ownCableText(build, args), command: { name: 'unseat-plug', args } }];
}

/** What would feed a connector: the loose plugs made for it, those of a cable that already hangs on a supply first. */
export function feedRemedies(context: CheckContext, connector: Connector): readonly Remedy[] {
  const { build } = context;
  const made = context.loose.filter(
    ({ lead, plug }) =>
      lead.parts.length === 0 && plug.family === connector.family && lead.setAside === undefined,
  );
  const hanging = made.filter(({ lead }) => plugAtSupply(context, lead.id) !== undefined);
  for (const { ref } of [...hanging, ...made]) {
    const seat = placesOf(build, ref).find((place) => place.connector === connector.id);
    if (seat) return [{ text: moveText(build, ref, seat), command: { name: 'seat-plug', args: seat } }];
  }
  return [];
}

/** The plug of a lead that sits on a supply; undefined where none does. */
export function plugAtSupply(
  { build, plugs }: Pick<CheckContext, 'build' | 'plugs'>,
  lead: string,
): CheckedPlug | undefined {
  return plugs.find((plug) => plug.lead.id === lead && unitWith(build, plug.connector.id)?.kind === 'supply');
}

/** What a connector is on: a unit by its name, or the board. */
export function unitText(build: Build, connector: string): string {
  return unitWith(build, connector)?.name ?? 'the board';
}
