import { grouped } from '../../../base/grouped';
import { addTurns } from '../../../base/units';
import type { Build, Seat } from '../../../document/build';
import { sameSeat } from '../../../document/lookup';
import { connectorName, leadName } from '../../../document/names';
import { tellsOutlets } from '../../../findings/fed-pins';
import { cellUnder } from '../../../fit/geometry';
import { placesOf } from '../../../fit/places';
import { exchanged } from '../exchange';
import { type Way, way } from '../fault';
import { placeId, seatingId } from '../seating-id';
import { isHarmed } from './cables-mixed';
import { feedOf } from './feed';
import type { OwnFault } from './share-out';
import { isForced, type PowerCables, type PowerPlug } from './supply-cables';
import { waysAt, waysOfFeed } from './wrong-feed';

/** How easily a plug of that shape is forced in the wrong way round; another is not. Common practice, no source. */
const TURNS_EASILY: Readonly<Record<string, number>> = {
  'peripheral-power': 1,
  'cpu-power': 0.1,
  'card-power': 0.1,
  'supply-side': 0.05,
  'main-power': 0.05,
};

/** Plugs that may have been turned by force, with what then arrives where. */
export function cablesTurned({ build, plugs }: PowerCables): readonly OwnFault[] {
  return plugs.flatMap((each): readonly OwnFault[] => {
    const { lead, plug, seat, connector } = each;
    const part = TURNS_EASILY[plug.family];
    if (part === undefined || plug.family !== connector.family) return [];
    const name = `${leadName(build, lead.id)} was forced in the wrong way round at ${connectorName(build, connector.id)}.`;
    if (each.forced) return [{ ...placed(seat, 'turned', name), part, ways: waysNow(build), isThere: true }];
    const round = turnedRound(each);
    if (!isForced(build, round)) return [];
    const turned: Build = { ...build, seats: build.seats.map((other) => (other === seat ? round : other)) };
    const ways = waysOfFeed(turned, build);
    // Where nobody has said what the outlets carry, it shows what it does on any machine.
    if (tellsOutlets(build) && ways.length === 0) return [];
    return [{ ...placed(round, 'turned', name), part, ...(ways.length > 0 && { ways }) }];
  });
}

/** The same holes over the same pins, the other way round. */
function turnedRound({ seat, plug: { grid } }: PowerPlug): Seat {
  const last = cellUnder(seat, [grid.rows - 1, grid.cols - 1]);
  return { ...seat, at: [last[0], last[1]], turn: addTurns(seat.turn, 180) };
}

/** Plugs on another place than their own: on another outlet, exchanged at the supply, or forced on another socket. */
export function cablesElsewhere(cables: PowerCables): readonly OwnFault[] {
  const { plugs } = cables;
  return plugs.flatMap((each) => [
    ...onOtherOutlets(cables, each),
    ...exchangedWith(cables, each),
    ...crossed(cables, each),
  ]);
}

/** Outlets that it enters and that carry something else; where it is on one now, the one it is on. */
function onOtherOutlets(
  { build, plugs }: PowerCables,
  { lead, plug, seat, end }: PowerPlug,
): readonly OwnFault[] {
  if (end !== 'outlet') return [];
  const others = build.seats.filter((each) => each !== seat);
  const there = (place: Seat): Build => ({ ...build, seats: [...others, place] });
  const name = (place: Seat) => `${leadName(build, lead.id)} is on ${connectorName(build, place.connector)}.`;
  const places = placesOf(build, { lead: lead.id, plug: plug.id }).filter((place) => !sameSeat(place, seat));
  if (isHarmed(build, plugs, lead)) {
    const isRightElsewhere = places.some((place) => !isHarmed(there(place), plugs, lead));
    return isRightElsewhere
      ? [{ ...placed(seat, 'elsewhere', name(seat)), ways: waysNow(build), isThere: true }]
      : [];
  }
  const byOutlet = grouped(places, ({ connector }) => connector);
  return [...byOutlet.values()].flatMap((those): readonly OwnFault[] => {
    // A small plug enters a large outlet in several places: the first that harms something stands for them.
    for (const place of those) {
      const ways = waysOfFeed(there(place), build);
      if (ways.length > 0) return [{ ...placed(place, 'elsewhere', name(place)), ways }];
    }
    return [];
  });
}

/** Two cables that enter each other's outlet; each pair once, from the first of the two. */
function exchangedWith({ build, plugs }: PowerCables, one: PowerPlug): readonly OwnFault[] {
  if (one.end !== 'outlet') return [];
  return plugs.slice(plugs.indexOf(one) + 1).flatMap((other): readonly OwnFault[] => {
    if (other.end !== 'outlet' || other.lead === one.lead) return [];
    const put = exchanged(build, one.seat, other.seat);
    const ways = put ? waysOfFeed(put.build, build) : [];
    if (put === undefined || ways.length === 0) return [];
    const names = [one, other].map(({ lead }) => leadName(build, lead.id));
    return [
      {
        id: seatingId(one.seat, 'exchanged', `${other.lead.id}.${other.plug.id}`),
        name: `${names.join(' and ')} have changed places at the supply.`,
        lead: one.lead.id,
        seat: put.seat,
        ways,
      },
    ];
  });
}

/** A plug that somebody pushed on a socket of another kind had to be pushed hard. Common practice, no source. */
const PUSHED = { 'plug-will-not-fit': 0.4 } as const;

/** A plug for the processor on a card, or the other way round: as large, and the other way up. */
const CROSSED: Readonly<Record<string, string>> = { 'cpu-power': 'card-power', 'card-power': 'cpu-power' };

function crossed({ build, plugs }: PowerCables, each: PowerPlug): readonly OwnFault[] {
  const { lead, plug, seat, connector, end } = each;
  if (end !== 'inlet') return [];
  const nameOn = (id: string) => `${leadName(build, lead.id)} was forced on ${connectorName(build, id)}.`;
  if (connector.family !== plug.family)
    return [
      { ...placed(seat, 'crossed', nameOn(connector.id)), ways: waysNow(build).map(pushed), isThere: true },
    ];
  return feedOf(build).flatMap(({ connector: to }): readonly OwnFault[] => {
    if (to.family !== CROSSED[plug.family] || plug.grid.cols > to.grid.cols) return [];
    const on: Seat = { ...seat, connector: to.id, at: [0, 0], turn: 0 };
    const others = build.seats.filter((other) => other !== seat && other.connector !== to.id);
    const isCovered = plugs.some((other) => other.connector.id === to.id);
    const put: Build = { ...build, seats: [...others, on] };
    const ways = isCovered || isForced(put, on) ? waysOfFeed(put, build) : [];
    return ways.length === 0 ? [] : [{ ...placed(on, 'crossed', nameOn(to.id)), ways: ways.map(pushed) }];
  });
}

function pushed({ share, machine, signs }: Way): Way {
  return way(share, machine, { ...signs, ...PUSHED });
}

function waysNow(build: Build): readonly Way[] {
  const ways = waysAt(feedOf(build));
  return ways.length > 0 ? ways : [way(1, {})];
}

function placed(seat: Seat, kind: string, name: string): OwnFault {
  return { id: seatingId(seat, kind, placeId(seat)), name, lead: seat.lead, seat };
}
