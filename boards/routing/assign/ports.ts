import type { LineRateGbps } from '../../document/rating';
import { allot } from './allot';
import { indexOf, stayWhereTheyAre } from './stay';

/** A socket of the board for a drive's data cable. */
export interface DataPort {
  readonly id: string;
  readonly lineRateGbps: LineRateGbps;
  /** M.2 places of the board that switch it off when something is in them, by the board's manual. */
  readonly offWith?: readonly string[];
}

export interface DataDrive {
  readonly id: string;
  readonly lineRateGbps: LineRateGbps;
  /** What it moves at best, where its maker says so: a turning disk is slower than its line. */
  readonly fastestMBps?: number;
  /** The port that it is on now; it stays there if no other is better. */
  readonly on?: string;
  /** The port that the person has chosen. */
  readonly pinned?: string;
}

/** Why a drive is where it is, or nowhere. */
type PortReason =
  | { readonly code: 'full-speed'; readonly needsMBps: number; readonly portMBps: number }
  | { readonly code: 'slowed'; readonly needsMBps: number; readonly portMBps: number }
  /** All ports that are on are taken by drives that lose more. */
  | { readonly code: 'no-port-left' }
  /** The sheet of the board names none. */
  | { readonly code: 'no-ports' }
  /** The chosen port is off because of what is in that M.2 place. */
  | { readonly code: 'pinned-off'; readonly port: string; readonly m2: string }
  | { readonly code: 'pinned-taken'; readonly port: string }
  | { readonly code: 'pinned-unknown'; readonly port: string };

export interface DriveOnPort {
  readonly drive: string;
  readonly port?: string;
  readonly pinned: boolean;
  readonly reason: PortReason;
}

interface PortPlan {
  readonly drives: readonly DriveOnPort[];
  /** Nothing loses less; else the best that was found. */
  readonly proven: boolean;
}

/** Payload of a line: 8b/10b sends ten bits for each byte, so 6 Gb/s carry 600 MB/s. */
export function payloadMBps(lineRateGbps: LineRateGbps): number {
  return Math.round((lineRateGbps * 1_000) / 10);
}

/** So much heavier than any sum of spare speed, which only keeps fast ports free. */
const LOSS_WEIGHS = 1_000_000;

/**
 * A data port for every drive: first as many drives as can be, then the least speed lost over all of them,
 * then the fastest ports kept free. A link runs at the rate of its slower side.
 *
 * @param usedM2 M.2 places with something in them
 */
export function drivesToPorts(
  drives: readonly DataDrive[],
  ports: readonly DataPort[],
  usedM2: readonly string[],
): PortPlan {
  const offBy = ports.map(({ offWith = [] }) => offWith.find((place) => usedM2.includes(place)));
  const items = drives.map((drive) => ({
    takes: [1],
    weight: 1,
    costs: ports.map((port, at) => {
      if (offBy[at] !== undefined) return undefined;
      if (drive.pinned !== undefined && drive.pinned !== port.id) return undefined;
      const over = payloadMBps(port.lineRateGbps) - needsMBps(drive);
      return over < 0 ? -over * LOSS_WEIGHS : over;
    }),
  }));
  const rooms = ports.map(() => [1]);
  const { places: allotted, proven } = allot(items, rooms);
  const own = drives.map(({ on }) => indexOf(ports, on));
  const places = stayWhereTheyAre(items, rooms, allotted, own);
  return {
    proven,
    drives: drives.map((drive, at): DriveOnPort => {
      const port = ports[places[at] ?? -1];
      const pinned = drive.pinned !== undefined;
      if (port === undefined) return { drive: drive.id, pinned, reason: whyNone(drive, ports, offBy) };
      const needs = needsMBps(drive);
      const portMBps = payloadMBps(port.lineRateGbps);
      const code = portMBps < needs ? 'slowed' : 'full-speed';
      return { drive: drive.id, port: port.id, pinned, reason: { code, needsMBps: needs, portMBps } };
    }),
  };
}

function needsMBps({ lineRateGbps, fastestMBps = Infinity }: DataDrive): number {
  return Math.min(payloadMBps(lineRateGbps), Math.ceil(fastestMBps));
}

function whyNone(
  { pinned }: DataDrive,
  ports: readonly DataPort[],
  offBy: readonly (string | undefined)[],
): PortReason {
  if (pinned === undefined) return { code: ports.length === 0 ? 'no-ports' : 'no-port-left' };
  const at = ports.findIndex(({ id }) => id === pinned);
  if (at < 0) return { code: 'pinned-unknown', port: pinned };
  const m2 = offBy[at];
  return m2 === undefined ? { code: 'pinned-taken', port: pinned } : { code: 'pinned-off', port: pinned, m2 };
}
