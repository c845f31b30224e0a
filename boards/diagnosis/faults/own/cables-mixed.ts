import { grouped } from '../../../base/grouped';
import type { Build } from '../../../document/build';
import type { Lead } from '../../../document/lead';
import { leadName } from '../../../document/names';
import { withLead } from '../../../document/with-part';
import { placesOf } from '../../../fit/places';
import type { Way } from '../fault';
import { feedOf } from './feed';
import { cablesOfOthers } from './other-supplies';
import type { OwnFault } from './share-out';
import type { PowerCables, PowerPlug } from './supply-cables';
import { harmAt, waysAt, waysOfFeed } from './wrong-feed';

/** Each cable that comes off the supply, were it one of another: what it would bring is followed wire by wire. */
export function cablesMixed({ build, plugs }: PowerCables): readonly OwnFault[] {
  return plugs.flatMap((plug): readonly OwnFault[] => {
    if (plug.end !== 'outlet') return [];
    const { lead } = plug;
    const head = { id: `${lead.id}/${plug.plug.id}/other-cable/`, lead: lead.id };
    const written = isWrittenMixed(build, plugs, plug);
    const ways = written
      ? waysAt(feedOf(build).filter(({ connector }) => isAt(plugs, lead, connector.id)))
      : waysOfOthers(build, plug);
    if (ways.length === 0) return [];
    const name = written
      ? `${leadName(build, lead.id)} is a cable of another supply.`
      : `A cable of another supply is in place of ${leadName(build, lead.id)}.`;
    return [{ ...head, name, ways, ...(written && { isThere: true }) }];
  });
}

/** Over the orders that another maker may have: those that harm something, and those that come to the same as one. */
function waysOfOthers(build: Build, { lead, plug }: PowerPlug): readonly Way[] {
  const ways = cablesOfOthers(lead, plug.id).flatMap((other) => waysOfFeed(withLead(build, other), build));
  const alike = grouped(ways, ({ machine, signs }) => JSON.stringify([machine, signs]));
  return [...alike.values()].flatMap((those) => {
    const share = those.reduce((sum, each) => sum + each.share, 0);
    return those.slice(0, 1).map((each) => ({ ...each, share }));
  });
}

/** Something it is plugged into gets what it is not made for, and no outlet that it enters would put that right. */
function isWrittenMixed(build: Build, plugs: readonly PowerPlug[], { lead, plug, seat }: PowerPlug): boolean {
  if (!isHarmed(build, plugs, lead)) return false;
  const others = build.seats.filter((each) => each !== seat);
  return placesOf(build, { lead: lead.id, plug: plug.id }).every((place) =>
    isHarmed({ ...build, seats: [...others, place] }, plugs, lead),
  );
}

/** Something arrives, and it is not what is wanted; that nothing does has other reasons. */
export function isHarmed(build: Build, plugs: readonly PowerPlug[], lead: Lead): boolean {
  return feedOf(build).some(
    (inlet) =>
      isAt(plugs, lead, inlet.connector.id) &&
      harmAt(inlet) !== 'none' &&
      inlet.pins.some(({ fed }) => fed !== 'nothing'),
  );
}

/** Whether a plug of that cable is on a connector as its shape lets it. */
function isAt(plugs: readonly PowerPlug[], lead: Lead, connector: string): boolean {
  return plugs.some((each) => each.lead === lead && each.connector.id === connector && !each.forced);
}
