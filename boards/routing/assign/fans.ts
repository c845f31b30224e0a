import type { Amps } from '../../base/units';
import type { SpeedMode } from '../../document/rating';
import { allot } from './allot';
import { indexOf, stayWhereTheyAre } from './stay';

/** A part with several fan connectors on one header. */
interface FanHub {
  readonly outlets: number;
  /** `supply`: it has a lead to the supply unit, and takes only the speed signal from the header. */
  readonly fedBy: 'header' | 'supply';
  /** What its outlets may carry together, by its maker. */
  readonly ratedA: Amps;
  /** The outlet, from 1, whose fan reports its speed to the header; none of them where nothing is said. */
  readonly speedOutlet?: number;
}

export interface FanHeader {
  readonly id: string;
  readonly modes: readonly SpeedMode[];
  /** By the board's manual. */
  readonly ratedA: Amps;
  /** The board does not start, or warns, when no speed is reported here. */
  readonly watched?: true;
  readonly hub?: FanHub;
}

export interface Fan {
  readonly id: string;
  /** Up to three wires are set by voltage; four are set by pulses as well. */
  readonly wires: 3 | 4;
  /** It has no wire for its speed. */
  readonly silent?: true;
  /** The fan on the processor's cooler, which the board watches. */
  readonly cools: 'processor' | 'case';
  readonly runningA: Amps;
  /** The headers that its plug enters by its shape; all where this is silent. */
  readonly fits?: readonly string[];
  /** For the first second or so; never below what it takes when running. */
  readonly startA: Amps;
  /** The header that it is on now; it stays there if no other is better. */
  readonly on?: string;
  /** What it sits on is what the board hears there: the header itself, or one outlet of its hub. */
  readonly heard?: true;
  readonly pinned?: string;
}

/** How fast a fan then runs. */
type SpeedSet =
  | 'by-pulses'
  | 'by-voltage'
  /** Three wires where only pulses are given: the full voltage is always there. */
  | 'always-full';

type FanReason =
  | {
      readonly code: 'placed';
      readonly speed: SpeedSet;
      readonly reports: boolean;
      /** The processor's fan where the board does not watch it, because the person chose so. */
      readonly astray: boolean;
    }
  | { readonly code: 'no-header-left' }
  /** The sheet of the board names none, and it is no fan that the board has to watch. */
  | { readonly code: 'no-headers' }
  /** No header is watched, or none that would see its speed. */
  | { readonly code: 'no-watched-header' }
  /** Its plug enters none: a fan for a plug of the supply. */
  | { readonly code: 'fits-none' }
  | { readonly code: 'pinned-unknown' }
  | { readonly code: 'pinned-no-fit' }
  /** What it would take at its start is more than all that the chosen one may carry. */
  | { readonly code: 'pinned-overloaded'; readonly startA: Amps; readonly ratedA: Amps }
  | { readonly code: 'pinned-taken' };

export interface FanOnHeader {
  readonly fan: string;
  readonly header?: string;
  /** Of the hub, from 1, where there is one. */
  readonly outlet?: number;
  readonly reason: FanReason;
}

export interface HeaderLoad {
  readonly header: string;
  readonly runningA: Amps;
  /** When all its fans start at once. */
  readonly startA: Amps;
  /** Of header and hub, whichever carries less. */
  readonly ratedA: Amps;
  /** Which of the two the current comes from. */
  readonly from: 'header' | 'supply';
}

interface FanPlan {
  readonly fans: readonly FanOnHeader[];
  readonly loads: readonly HeaderLoad[];
  readonly proven: boolean;
}

const MA_PER_A = 1_000;

/** What each kind of speed costs: a fan that cannot be slowed is only loud. */
const SPEED_COSTS: Readonly<Record<SpeedSet, number>> = {
  'by-pulses': 0,
  'by-voltage': 1,
  'always-full': 20,
};

/** A case fan on a watched header keeps it from the processor's. */
const ON_WATCHED_COSTS = 5;

/**
 * A header or an outlet of its hub for every fan, with no current above any rating even when all of them
 * start at once. The processor's fan goes first, to a watched header that sees its speed; then as many of
 * the others as can be, then as many as can be with their speed set.
 */
export function fansToHeaders(fans: readonly Fan[], headers: readonly FanHeader[]): FanPlan {
  const items = fans.map((fan) => ({
    // The last is the speed signal, of which each header has one.
    takes: [1, milliamps(fan.startA), milliamps(fan.runningA), fan.cools === 'processor' ? 1 : 0],
    weight: fan.cools === 'processor' ? fans.length + 1 : 1,
    costs: headers.map((header) =>
      fan.pinned === undefined || fan.pinned === header.id ? costAt(fan, header) : undefined,
    ),
  }));
  const rooms = headers.map((header) => {
    const rated = milliamps(carriedA(header));
    return [header.hub?.outlets ?? 1, rated, rated, 1];
  });
  const { places: allotted, proven } = allot(items, rooms);
  const own = fans.map(({ on }) => indexOf(headers, on));
  const places = stayWhereTheyAre(items, rooms, allotted, own);
  const outlets = headers.map((header, at) =>
    outletsOf(
      header,
      fans.filter((_, fan) => places[fan] === at),
    ),
  );
  return {
    proven,
    fans: fans.map((fan, at): FanOnHeader => {
      const place = places[at] ?? -1;
      const header = headers[place];
      if (header === undefined) return { fan: fan.id, reason: whyNone(fan, headers) };
      const outlet = outlets[place]?.get(fan.id);
      const isHeard = header.hub === undefined || outlet === header.hub.speedOutlet;
      const reports = isHeard && fan.silent !== true;
      const astray = fan.cools === 'processor' && header.watched !== true;
      const reason: FanReason = { code: 'placed', speed: speedAt(fan, header), reports, astray };
      return { fan: fan.id, header: header.id, ...(outlet !== undefined && { outlet }), reason };
    }),
    loads: headers.map((header, at) =>
      headerLoad(
        header,
        fans.filter((_, fan) => places[fan] === at),
      ),
    ),
  };
}

function costAt(fan: Fan, header: FanHeader): number | undefined {
  if (!isFor(fan, header)) return undefined;
  const cost = SPEED_COSTS[speedAt(fan, header)];
  const watched = header.watched === true;
  if (fan.cools === 'case') return watched ? cost + ON_WATCHED_COSTS : cost;
  // The person's own choice is followed; what it means is told by `astray`.
  return (watched || fan.pinned !== undefined) && seesSpeed(header) ? cost : undefined;
}

function isFor({ fits }: Fan, { id }: FanHeader): boolean {
  return fits === undefined || fits.includes(id);
}

function seesSpeed({ hub }: FanHeader): boolean {
  return hub === undefined || hub.speedOutlet !== undefined;
}

function speedAt({ wires }: Fan, { modes, hub }: FanHeader): SpeedSet {
  if (wires === 4 && modes.includes('pwm')) return 'by-pulses';
  // A hub with its own lead gives the supply's full voltage, whatever the header does.
  return modes.includes('dc') && hub?.fedBy !== 'supply' ? 'by-voltage' : 'always-full';
}

function carriedA({ ratedA, hub }: FanHeader): Amps {
  if (hub === undefined) return ratedA;
  return hub.fedBy === 'supply' ? hub.ratedA : Math.min(ratedA, hub.ratedA);
}

/**
 * The processor's fan gets the outlet that reports its speed, else one that has a speed to report: the fan that is
 * there, or the first.
 */
function outletsOf({ id: header, hub }: FanHeader, fans: readonly Fan[]): ReadonlyMap<string, number> {
  if (hub === undefined) return new Map();
  const all = Array.from({ length: hub.outlets }, (_, at) => at + 1);
  const order = all.toSorted((a, b) => Number(b === hub.speedOutlet) - Number(a === hub.speedOutlet));
  const isThere = ({ on, heard }: Fan) => Number(on === header && heard === true);
  const first = fans.toSorted(
    (a, b) =>
      Number(b.cools === 'processor') - Number(a.cools === 'processor') ||
      Number(a.silent === true) - Number(b.silent === true) ||
      isThere(b) - isThere(a),
  );
  return new Map(first.flatMap(({ id }, at) => (order[at] === undefined ? [] : [[id, order[at]] as const])));
}

/** What a header, or the supply of its hub, has to carry with these fans on it. */
function headerLoad(header: FanHeader, fans: readonly Fan[]): HeaderLoad {
  return {
    header: header.id,
    ...sumOf(fans),
    ratedA: carriedA(header),
    from: header.hub?.fedBy ?? 'header',
  };
}

/** What fans take together. */
export function sumOf(fans: readonly Fan[]): Pick<HeaderLoad, 'startA' | 'runningA'> {
  const sumA = (of: (fan: Fan) => Amps) => fans.reduce((sum, fan) => sum + milliamps(of(fan)), 0) / MA_PER_A;
  return { startA: sumA(({ startA }) => startA), runningA: sumA(({ runningA }) => runningA) };
}

function whyNone(fan: Fan, headers: readonly FanHeader[]): FanReason {
  if (headers.length > 0 && !headers.some((header) => isFor(fan, header))) return { code: 'fits-none' };
  if (fan.pinned === undefined) {
    const seen = headers.some((header) => costAt(fan, header) !== undefined);
    if (!seen && fan.cools === 'processor') return { code: 'no-watched-header' };
    return { code: headers.length === 0 ? 'no-headers' : 'no-header-left' };
  }
  const header = headers.find(({ id }) => id === fan.pinned);
  if (header === undefined) return { code: 'pinned-unknown' };
  if (!isFor(fan, header)) return { code: 'pinned-no-fit' };
  if (costAt(fan, header) === undefined) return { code: 'no-watched-header' };
  const ratedA = carriedA(header);
  if (milliamps(fan.startA) > milliamps(ratedA))
    return { code: 'pinned-overloaded', startA: fan.startA, ratedA };
  return { code: 'pinned-taken' };
}

function milliamps(amps: Amps): number {
  return Math.round(amps * MA_PER_A);
}
