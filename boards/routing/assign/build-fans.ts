import { byIdentity } from '../../base/by-identity';
import type { Build } from '../../document/build';
import type { Connector } from '../../document/connector';
import type { Lead } from '../../document/lead';
import { choicesOf, leadOf, leadsOf, seatOf, unitsOf } from '../../document/lookup';
import type { FanRating, HubRating } from '../../document/rating';
import type { Unit } from '../../document/unit';
import type { SignalId } from '../../signals/signals';
import type { Fan, FanHeader } from './fans';

/** What is taken where nobody has read a label or a manual. */
export const USUAL_FAN: FanRating = { runningAmps: 0.2, startAmps: 0.5, cools: 'case' };
/** A header may carry about 1 A (common practice, no source). */
export const USUAL_HEADER_AMPS = 1;

/** The contacts of a SATA power plug carry 4.5 A at 12 V (from memory); most hubs hang on one. */
export const USUAL_HUB_AMPS = 4.5;

/** Something that was assumed, because the sheet is silent about it. */
export type Assumed =
  | { readonly code: 'fan'; readonly lead: string }
  | { readonly code: 'hub'; readonly unit: string }
  | { readonly code: 'header-amps'; readonly connector: string }
  | { readonly code: 'watched'; readonly connector: string }
  | { readonly code: 'line-rate'; readonly connector: string }
  | { readonly code: 'drive'; readonly unit: string }
  | { readonly code: 'branch-amps'; readonly lead: string };

/** A hub with the connectors that its fans go on, the one that reports its speed first. */
export interface JoinedHub {
  readonly unit: Unit;
  readonly rating: HubRating;
  readonly outlets: readonly string[];
}

/** The fans of a build and the headers that they may go on. */
export interface BuildFans {
  /** By the id of their lead. */
  readonly fans: readonly Fan[];
  /** By the id of their connector. */
  readonly headers: readonly FanHeader[];
  /** By header: the hub on it. */
  readonly hubs: ReadonlyMap<string, JoinedHub>;
  /** By fan: the header that it is on now, by itself or over a hub, and the connector it sits on. */
  readonly now: ReadonlyMap<string, { readonly header: string; readonly connector: string }>;
  readonly assumed: readonly Assumed[];
}

export function hasSignal({ pins }: Connector, signal: SignalId): boolean {
  return pins.some((pin) => pin.signal === signal);
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
  const hubs = hubsOn(build, sockets);
  const headers = sockets.map((connector): FanHeader => {
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
      ...(hub && {
        hub: {
          outlets: hub.outlets.length,
          fedBy: hub.rating.fedBy,
          ratedA: hub.rating.amps,
          ...(hub.rating.speedOutlet !== undefined && { speedOutlet: 1 }),
        },
      }),
    };
  });
  for (const { unit } of hubs.values())
    if (unit.hub === undefined) assumed.push({ code: 'hub', unit: unit.id });
  const isHeader = new Set(headers.map(({ id }) => id));
  const now = new Map<string, { header: string; connector: string }>();
  const fans = leadsOf(build).flatMap((lead): readonly Fan[] => {
    const part = lead.parts.find(({ kind }) => kind === 'fan');
    if (part === undefined || lead.setAside === true) return [];
    if (part.fan === undefined) assumed.push({ code: 'fan', lead: lead.id });
    const { runningAmps, startAmps, cools } = part.fan ?? usualFan(lead);
    for (const plug of lead.plugs) {
      const connector = seatOf(build, { lead: lead.id, plug: plug.id })?.connector;
      const header = connector && (isHeader.has(connector) ? connector : headerBehind(hubs, connector));
      if (connector !== undefined && header !== undefined) now.set(lead.id, { header, connector });
    }
    const hasPulses = lead.wires.some(({ from, to }) => [from, to].includes(`${part.id}.pwm`));
    const pinned = choiceOf(build, 'header', lead.id);
    return [
      {
        id: lead.id,
        wires: hasPulses ? 4 : 3,
        cools,
        runningA: runningAmps,
        startA: Math.max(startAmps, runningAmps),
        ...(pinned !== undefined && { pinned }),
      },
    ];
  });
  return { fans, headers, hubs, now, assumed };
}

/** The header that a hub is on, by one of its outlets. */
function headerBehind(hubs: BuildFans['hubs'], outlet: string): string | undefined {
  return [...hubs].find(([, { outlets }]) => outlets.includes(outlet))?.[0];
}

/** The fans that are on a header now, by themselves or over the hub on it. */
export function fansOn({ fans, now }: BuildFans, header: string): readonly Fan[] {
  return fans.filter(({ id }) => now.get(id)?.header === header);
}

/** What a person has chosen for a drive or fan; undefined where the choice is free. */
export function choiceOf(build: Build, kind: 'port' | 'header' | 'branch', of: string): string | undefined {
  return choicesOf(build).find((choice) => choice.kind === kind && choice.of === of)?.on;
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

/** Of a fan whose label nobody read: its name or the print on its plug may say what it cools. */
export function usualFan({ name, plugs }: Lead): FanRating {
  const isCooler = [name, ...plugs.map(({ print }) => print)].some((words) =>
    /cpu|processor|cooler/i.test(words),
  );
  return { ...USUAL_FAN, cools: isCooler ? 'processor' : 'case' };
}

/** Whether the header that a fan is on hears its speed: over its own wire, and through a hub only of one outlet. */
export function reportsSpeed(build: Build, { hubs, now }: BuildFans, fan: string): boolean {
  const lead = leadOf(build, fan);
  const at = now.get(fan);
  const part = lead?.parts.find(({ kind }) => kind === 'fan');
  if (lead === undefined || at === undefined || part === undefined) return false;
  const hasWire = lead.wires.some(({ from, to }) => [from, to].includes(`${part.id}.tach`));
  const hub = hubs.get(at.header);
  return hasWire && (hub === undefined || hub.rating.speedOutlet === at.connector);
}

/** A hub is on the header that one of its leads comes from. */
function hubsOn(build: Build, headers: readonly Connector[]): ReadonlyMap<string, JoinedHub> {
  const found = new Map<string, JoinedHub>();
  for (const unit of unitsOf(build)) {
    if (unit.kind !== 'hub') continue;
    for (const lead of leadsOf(build)) {
      const seats = lead.plugs.flatMap(
        ({ id }) => seatOf(build, { lead: lead.id, plug: id })?.connector ?? [],
      );
      const header = headers.find(({ id }) => seats.includes(id));
      const input = unit.connectors.find(({ id }) => seats.includes(id));
      if (header === undefined || input === undefined || lead.parts.length > 0) continue;
      const outlets = unit.connectors.filter((each) => each.id !== input.id && hasSignal(each, 'fan-supply'));
      const rating = unit.hub ?? usualHub(unit, outlets);
      const speed = rating.speedOutlet;
      const order = outlets.toSorted((a, b) => Number(b.id === speed) - Number(a.id === speed));
      found.set(header.id, { unit, rating, outlets: order.map(({ id }) => id) });
    }
  }
  return found;
}
