import type { Lead } from '../document/lead';
import { leadOf, type PlugRef, partsOf, seatOf } from '../document/lookup';
import type { CheckContext } from './context';
import { placementOf } from './placement';

/** The plugs of a lead that carry wires of the same parts as the given one: single plugs of one LED. */
function partnersOf(lead: Lead, plug: string): readonly PlugRef[] {
  const own = partsOf(lead, { id: plug });
  return lead.plugs
    .filter((other) => other.id !== plug && [...partsOf(lead, other)].some((part) => own.has(part)))
    .map(({ id }) => ({ lead: lead.id, plug: id }));
}

/** What keeps a part from working, however right a plug of it lies: another of its plugs. */
type Hindrance =
  /** It lies wrong, and the part with it: the right place for this plug could close a harmful way. */
  | 'partner-wrong'
  /** The board has no place for it. */
  | 'partner-without-place';

/** Whether another plug of the same part makes the right place of this one worth nothing, or worse. */
export function hindranceOf(context: CheckContext, { lead: id, plug }: PlugRef): Hindrance | undefined {
  const lead = leadOf(context.build, id);
  const partners = lead ? partnersOf(lead, plug) : [];
  const seated = partners.filter((ref) => seatOf(context.build, ref) !== undefined);
  if (seated.some((ref) => liesWrong(context, ref))) return 'partner-wrong';
  const loose = partners.filter((ref) => !seated.includes(ref));
  return loose.some((ref) => context.properSeatsWhenBare(ref).length === 0)
    ? 'partner-without-place'
    : undefined;
}

function liesWrong({ plugs }: CheckContext, { lead, plug }: PlugRef): boolean {
  const found = plugs.find(({ ref }) => ref.lead === lead && ref.plug === plug);
  return found?.parts.some((part) => placementOf(part) !== 'right') ?? false;
}
