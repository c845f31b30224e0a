import type { Build } from '../document/build';
import type { Connector } from '../document/connector';
import { type PlugRef, seatOf, unitWith } from '../document/lookup';
import { placesOf } from '../fit/places';
import type { CheckContext } from './context';
import type { Remedy } from './finding';
import { moveText, ownCableText } from './words/remedies';

/** For a cable that brings the wrong rails: off with the end that sits on a supply, or with this one. */
export function cableRemedy({ build, plugs }: CheckContext, ref: PlugRef): readonly Remedy[] {
  const near = plugs.find(
    ({ lead, connector }) => lead.id === ref.lead && unitWith(build, connector.id)?.kind === 'supply',
  );
  const args = near?.ref ?? ref;
  return [{ text: ownCableText(build, args), command: { name: 'unseat-plug', args } }];
}

/** What would feed a connector: the loose plugs made for it, those of a cable that already hangs on a supply first. */
export function feedRemedies({ build, loose }: CheckContext, connector: Connector): readonly Remedy[] {
  const made = loose.filter(
    ({ lead, plug }) =>
      lead.parts.length === 0 && plug.family === connector.family && lead.setAside === undefined,
  );
  const hanging = made.filter(({ lead }) =>
    hangsOnSupply(
      build,
      lead.plugs.map(({ id }) => ({ lead: lead.id, plug: id })),
    ),
  );
  for (const { ref } of [...hanging, ...made]) {
    const seat = placesOf(build, ref).find((place) => place.connector === connector.id);
    if (seat) return [{ text: moveText(build, ref, seat), command: { name: 'seat-plug', args: seat } }];
  }
  return [];
}

function hangsOnSupply(build: Build, refs: readonly PlugRef[]): boolean {
  return refs.some((ref) => {
    const seat = seatOf(build, ref);
    return seat !== undefined && unitWith(build, seat.connector)?.kind === 'supply';
  });
}

/** What a connector is on: a unit by its name, or the board. */
export function unitText(build: Build, connector: string): string {
  return unitWith(build, connector)?.name ?? 'the board';
}
