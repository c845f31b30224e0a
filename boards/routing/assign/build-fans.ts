import { byIdentity } from '../../base/by-identity';
import type { Build } from '../../document/build';
import type { Connector } from '../../document/connector';
import type { Lead } from '../../document/lead';
import { anyConnectorOf, choicesOf, leadsOf, seatOf, unitsOf } from '../../document/lookup';
import type { FanRating } from '../../document/rating';
import type { Fan, FanHeader } from './fans';
import { hasSignal } from './has-signal';
import { type HungHub, heardAt, hungHubs, type JoinedHub, joinedHubs } from './hubs';
import { plugFor } from './plug-for';

/** What is taken where nobody has read a label or a manual. */
export const USUAL_FAN: FanRating = { runningAmps: 0.2, startAmps: 0.5, cools: 'case' };
/** A header may carry about 1 A (common practice, no source). */
export const USUAL_HEADER_AMPS = 1;

/** Something that was assumed, because the sheet is silent about it. */
export type Assumed =
  | { readonly code: 'fan'; readonly lead: string }
  | { readonly code: 'hub'; readonly unit: string }
  | { readonly code: 'header-amps'; readonly connector: string }
  | { readonly code: 'watched'; readonly connector: string }
  | { readonly code: 'line-rate'; readonly connector: string }
  | { readonly code: 'drive'; readonly unit: string }
  | { readonly code: 'branch-amps'; readonly lead: string };

/** Where a fan is plugged in. */
interface FanNow {
  /** What carries it, by itself or over hubs. */
  readonly header: string;
  /** What it sits on. */
  readonly connector: string;
  /** The header of the board that this ends at, which need not carry it. */
  readonly end?: string;
}

/** The fans of a build and the headers that they may go on. */
export interface BuildFans {
  /** By the id of their lead. */
  readonly fans: readonly Fan[];
  /** By the id of their connector; of a hub that has only the supply, by its first outlet. */
  readonly headers: readonly FanHeader[];
  /** By header: the hubs that draw from it, or from the supply in its stead. */
  readonly hubs: ReadonlyMap<string, JoinedHub>;
  /** Every hub that something feeds, also one that hangs on another. */
  readonly hung: readonly HungHub[];
  /** By header of the board: the connector whose fan it hears. */
  readonly heard: ReadonlyMap<string, string>;
  readonly now: ReadonlyMap<string, FanNow>;
  readonly assumed: readonly Assumed[];
}

/** What a build says of its fans, headers and hubs; what it does not say is taken as usual, and named. */
export const fansOf = byIdentity(workOut, whatFansNeed);

/** What of a build the places of its drives and fans depend on. */
export function whatFansNeed(build: Build): readonly object[] {
  return [build.board, unitsOf(build), build.case.leads, build.extras, build.seats, choicesOf(build)];
}

function workOut(build: Build): BuildFans {
  const assumed: Assumed[] = [];
  const sockets = build.board.connectors.filter((connector) => hasSignal(connector, 'fan-supply'));
  const watchedSaid = sockets.some(({ rating }) => rating?.watched === true);
  const ids = sockets.map(({ id }) => id);
  const hung = hungHubs(build, sockets);
  const heard = heardAt(hung, ids);
  const hubs = joinedHubs(hung, ids, heard);
  const onBoard = sockets.map((connector): FanHeader => {
    const { id, rating = {}, print } = connector;
    if (rating.amps === undefined) assumed.push({ code: 'header-amps', connector: id });
    // Where no manual was read, the print says which header is the processor's.
    const byPrint = !watchedSaid && /cpu/i.test(print);
    if (byPrint) assumed.push({ code: 'watched', connector: id });
    const hub = hubs.get(id);
    return {
      id,
      modes: rating.fanModes ?? (hasSignal(connector, 'fan-pwm') ? ['pwm'] : ['dc']),
      ratedA: rating.amps ?? USUAL_HEADER_AMPS,
      ...((rating.watched === true || byPrint) && { watched: true as const }),
      ...(hub && { hub: hubFor(hub) }),
    };
  });
  const headers = [...onBoard, ...bySupplyAlone(hubs, onBoard)];
  for (const { unit } of hung) if (unit.hub === undefined) assumed.push({ code: 'hub', unit: unit.id });
  const carriers = carriersOf(headers, hubs);
  const takesOf = new Map(headers.map(({ id }) => [id, placesAt(build, hubs, id)]));
  const now = new Map<string, FanNow>();
  const fans = leadsOf(build).flatMap((lead): readonly Fan[] => {
    const part = lead.parts.find(({ kind }) => kind === 'fan');
    if (part === undefined || lead.setAside === true) return [];
    if (part.fan === undefined) assumed.push({ code: 'fan', lead: lead.id });
    const { runningAmps, startAmps, cools } = part.fan ?? usualFan(lead);
    for (const plug of lead.plugs) {
      const connector = seatOf(build, { lead: lead.id, plug: plug.id })?.connector;
      const at = connector === undefined ? undefined : carriers.get(connector);
      if (connector !== undefined && at !== undefined) now.set(lead.id, { ...at, connector });
    }
    const has = (contact: 'pwm' | 'tach') =>
      lead.wires.some(({ from, to }) => [from, to].includes(`${part.id}.${contact}`));
    const fits = headers.filter(({ id }) =>
      takesOf.get(id)?.some((each) => plugFor(lead, each) !== undefined),
    );
    const on = now.get(lead.id);
    const isHeard = on?.end !== undefined && heard.get(on.end) === on.connector;
    const chosen = choiceOf(build, 'header', lead.id);
    const pinned = chosen === undefined ? undefined : (carriers.get(chosen)?.header ?? chosen);
    return [
      {
        id: lead.id,
        wires: has('pwm') ? 4 : 3,
        ...(!has('tach') && { silent: true as const }),
        cools,
        ...(fits.length < headers.length && { fits: fits.map(({ id }) => id) }),
        runningA: runningAmps,
        startA: Math.max(startAmps, runningAmps),
        ...(on && { on: on.header }),
        ...(isHeard && { heard: true as const }),
        ...(pinned !== undefined && { pinned }),
      },
    ];
  });
  return { fans, headers, hubs, hung, heard, now, assumed };
}

/** What a fan would sit on: the header itself, or what is left of the outlets behind it. */
function placesAt(build: Build, hubs: ReadonlyMap<string, JoinedHub>, header: string): readonly Connector[] {
  return (hubs.get(header)?.outlets ?? [header]).flatMap((id) => anyConnectorOf(build, id) ?? []);
}

/** Hubs as one with as many outlets, which may carry what the weakest of them may. */
function hubFor({ units, outlets, isHeard }: JoinedHub): NonNullable<FanHeader['hub']> {
  return {
    outlets: outlets.length,
    fedBy: units[0]?.rating.fedBy ?? 'header',
    ratedA: Math.min(...units.map(({ rating }) => rating.amps)),
    ...(isHeard && { speedOutlet: 1 }),
  };
}

/** Hubs with the supply that have no header for themselves: how fast says the one that their tail ends at, if any. */
function bySupplyAlone(
  hubs: ReadonlyMap<string, JoinedHub>,
  onBoard: readonly FanHeader[],
): readonly FanHeader[] {
  return [...hubs].flatMap(([id, joined]): readonly FanHeader[] => {
    if (onBoard.some((header) => header.id === id)) return [];
    const hub = hubFor(joined);
    const end = onBoard.find((header) => header.id === joined.units[0]?.header);
    const watched = joined.isHeard && end?.watched === true;
    return [
      { id, modes: end?.modes ?? [], ratedA: hub.ratedA, hub, ...(watched && { watched: true as const }) },
    ];
  });
}

/** By connector: what carries a fan there. */
function carriersOf(
  headers: readonly FanHeader[],
  hubs: ReadonlyMap<string, JoinedHub>,
): ReadonlyMap<string, Omit<FanNow, 'connector'>> {
  const carriers = new Map<string, Omit<FanNow, 'connector'>>();
  for (const { id } of headers) if (!hubs.has(id)) carriers.set(id, { header: id, end: id });
  for (const [at, { units }] of hubs)
    for (const { outlets, header: end } of units)
      for (const outlet of [at, ...outlets])
        carriers.set(outlet, { header: at, ...(end !== undefined && { end }) });
  return carriers;
}

/** The fans that are on a header now, by themselves or over the hub on it. */
export function fansOn({ fans, now }: BuildFans, header: string): readonly Fan[] {
  return fans.filter(({ id }) => now.get(id)?.header === header);
}

/** What a person has chosen for a drive or fan; undefined where the choice is free. */
export function choiceOf(build: Build, kind: 'port' | 'header' | 'branch', of: string): string | undefined {
  return choicesOf(build).find((choice) => choice.kind === kind && choice.of === of)?.on;
}

/** Of a fan whose label nobody read: its name or the print on its plug may say what it cools. */
export function usualFan({ name, plugs }: Lead): FanRating {
  const isCooler = [name, ...plugs.map(({ print }) => print)].some((words) =>
    /cpu|processor|cooler/i.test(words),
  );
  return { ...USUAL_FAN, cools: isCooler ? 'processor' : 'case' };
}

/** The fans whose header of the board is this one, whatever carries them. */
export function fansEndingAt({ fans, now }: BuildFans, header: string): readonly Fan[] {
  return fans.filter(({ id }) => now.get(id)?.end === header);
}

/** Whether the header that a fan is on hears its speed: over its own wire, and through a hub only of one outlet. */
export function reportsSpeed({ fans }: BuildFans, fan: string): boolean {
  return fans.some(({ id, silent, heard }) => id === fan && heard === true && silent !== true);
}
