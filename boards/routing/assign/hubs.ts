import type { Build } from '../../document/build';
import type { Connector } from '../../document/connector';
import { leadsOf, seatOf, unitsOf } from '../../document/lookup';
import { SOLDERED } from '../../document/power-job';
import type { HubRating } from '../../document/rating';
import type { Unit } from '../../document/unit';
import { hasSignal } from './has-signal';

/** The contacts of a SATA power plug carry 4.5 A at 12 V (from memory); most hubs hang on one. */
export const USUAL_HUB_AMPS = 4.5;

/** A hub for fans, and what it hangs on. */
export interface HungHub {
  readonly unit: Unit;
  readonly rating: HubRating;
  /** A header, or an outlet of another hub; undefined where it only has the supply. */
  readonly on?: string;
  /** The header of the board that its tail ends at, through other hubs too. */
  readonly header?: string;
  /** All its fan connectors but its way in, whatever is on them. */
  readonly outlets: readonly string[];
}

/** Hubs that draw all they give from one place, as one: from a header, or from the supply by a lead of their own. */
export interface JoinedHub {
  /** The one at the place first; those that hang on it and draw through it after it. */
  readonly units: readonly HungHub[];
  /** What is left for fans, the one that reports its speed first. */
  readonly outlets: readonly string[];
  /** The first of the outlets is the one whose fan the board hears. */
  readonly isHeard: boolean;
}

/** Of a hub whose sheet nobody read: fed from the supply where it has an input for that, its first speed wire live. */
export function usualHub({ connectors }: Unit, outlets: readonly Connector[]): HubRating {
  const isFed = connectors.some((each) => hasSignal(each, 'supply-12v'));
  const speaking = outlets.find((each) => hasSignal(each, 'fan-tach'));
  return {
    fedBy: isFed ? 'supply' : 'header',
    amps: USUAL_HUB_AMPS,
    ...(speaking && { speedOutlet: speaking.id }),
  };
}

/**
 * The hubs that something feeds, followed from outlet to outlet: those that end at a header, then those that
 * have the supply alone. No hub hangs twice, so a ring of tails ends where it began.
 */
export function hungHubs(build: Build, headers: readonly Connector[]): readonly HungHub[] {
  const units = unitsOf(build).filter(
    ({ kind, connectors }) => kind === 'hub' && connectors.some((each) => hasSignal(each, 'fan-supply')),
  );
  if (units.length === 0) return [];
  const joined = joinedBy(build);
  const found = new Map<string, HungHub>();
  const hang = (hub: HungHub): readonly string[] => {
    found.set(hub.unit.id, hub);
    return hub.outlets;
  };
  const follow = (from: readonly string[], headerOf: (on: string) => string | undefined): void => {
    const waiting = [...from];
    for (const on of waiting)
      for (const unit of units) {
        const input = unit.connectors.find(({ id }) => id !== on && joined.get(on)?.has(id));
        if (input === undefined || found.has(unit.id)) continue;
        const above = [...found.values()].find(({ outlets }) => outlets.includes(on));
        const header = above === undefined ? headerOf(on) : above.header;
        waiting.push(...hang({ ...hubBy(unit, input.id), on, ...(header !== undefined && { header }) }));
      }
  };
  follow(
    headers.map(({ id }) => id),
    (on) => on,
  );
  for (const unit of units) {
    const hub = hubBy(unit, wayInOf(unit, joined));
    if (found.has(unit.id) || hub.rating.fedBy !== 'supply' || !hasSupply(build, unit)) continue;
    follow(hang(hub), () => undefined);
  }
  return [...found.values()];
}

/** By connector: what leads without a part of their own join it to, itself among them. */
function joinedBy(build: Build): ReadonlyMap<string, ReadonlySet<string>> {
  const joined = new Map<string, Set<string>>();
  for (const { id: lead, plugs, parts, setAside } of leadsOf(build)) {
    if (parts.length > 0 || setAside === true) continue;
    const ends = plugs.flatMap(({ id: plug }) => seatOf(build, { lead, plug })?.connector ?? []);
    for (const end of ends) joined.set(end, new Set([...(joined.get(end) ?? []), ...ends]));
  }
  return joined;
}

function hubBy(unit: Unit, input: string | undefined): Pick<HungHub, 'unit' | 'rating' | 'outlets'> {
  const outlets = unit.connectors.filter((each) => each.id !== input && hasSignal(each, 'fan-supply'));
  return { unit, rating: unit.hub ?? usualHub(unit, outlets), outlets: outlets.map(({ id }) => id) };
}

/** Where the tail of a hub that is on nothing begins: soldered in, or else where a cable is. */
function wayInOf({ connectors }: Unit, joined: ReadonlyMap<string, ReadonlySet<string>>): string | undefined {
  const ways = connectors.filter((each) => hasSignal(each, 'fan-supply'));
  return (ways.find(({ family }) => family === SOLDERED) ?? ways.find(({ id }) => joined.has(id)))?.id;
}

/** Something is in its power socket, or its sheet does not list one. */
function hasSupply({ seats }: Build, { connectors }: Unit): boolean {
  const sockets = connectors.filter((each) => hasSignal(each, 'supply-12v'));
  return sockets.length === 0 || sockets.some(({ id }) => seats.some(({ connector }) => connector === id));
}

/** By header: the connector whose fan the board hears there, which is the header itself where no hub is on it. */
export function heardAt(hubs: readonly HungHub[], headers: readonly string[]): ReadonlyMap<string, string> {
  const speaker = (at: string): string | undefined => {
    const here = hubs.filter(({ on }) => on === at);
    if (here.length === 0) return at;
    const [outlet] = here.flatMap(({ rating, outlets }) => outlets.filter((id) => id === rating.speedOutlet));
    return outlet === undefined ? undefined : speaker(outlet);
  };
  return new Map(
    headers.flatMap((header) => {
      const heard = speaker(header);
      return heard === undefined ? [] : [[header, heard] as const];
    }),
  );
}

/**
 * The hubs by the place that they draw from. A hub with the supply is a place of its own: by the name of the
 * header where it has that for itself, else by its first outlet.
 */
export function joinedHubs(
  hubs: readonly HungHub[],
  headers: readonly string[],
  heard: ReadonlyMap<string, string>,
): ReadonlyMap<string, JoinedHub> {
  const drawingAt = (at: string): readonly HungHub[] =>
    hubs.filter(({ on, rating }) => on === at && rating.fedBy === 'header').flatMap(withBelow);
  const withBelow = (hub: HungHub): readonly HungHub[] => [hub, ...hub.outlets.flatMap(drawingAt)];
  const used = new Set(hubs.map(({ on }) => on));
  const join = (units: readonly HungHub[]): JoinedHub => {
    const speaking = heard.get(units[0]?.header ?? '');
    const free = units.flatMap(({ outlets }) => outlets).filter((id) => !used.has(id));
    return {
      units,
      outlets: free.toSorted((a, b) => Number(b === speaking) - Number(a === speaking)),
      isHeard: speaking !== undefined && free.includes(speaking),
    };
  };
  const ownHeader = ({ unit, on }: HungHub): string | undefined => {
    const [first, ...more] = hubs.filter((each) => each.on === on);
    const isFirst = first?.unit === unit && more.every(({ rating }) => rating.fedBy === 'supply');
    return isFirst ? headers.find((id) => id === on) : undefined;
  };
  const drawing = headers.map((header) => [header, drawingAt(header)] as const);
  const supplied = hubs
    .filter(({ rating }) => rating.fedBy === 'supply')
    .map((hub) => [ownHeader(hub) ?? hub.outlets[0] ?? '', withBelow(hub)] as const);
  const all = [...drawing, ...supplied].filter(([, units]) => units.length > 0);
  return new Map(all.map(([at, units]) => [at, join(units)]));
}
