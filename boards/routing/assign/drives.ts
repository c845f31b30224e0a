import type { Amps } from '../../base/units';
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
  if (pinned === undefined) return { code: 'no-port-left' };
  const at = ports.findIndex(({ id }) => id === pinned);
  if (at < 0) return { code: 'pinned-unknown', port: pinned };
  const m2 = offBy[at];
  return m2 === undefined ? { code: 'pinned-taken', port: pinned } : { code: 'pinned-off', port: pinned, m2 };
}

/** A cable of the supply with several plugs for drives. */
export interface SupplyBranch {
  readonly id: string;
  readonly connectors: number;
  /** What it may carry, by the supply's manual. */
  readonly ratedA: Amps;
  /** What is on it beside drives: plugs that are taken, and what is known that they carry at the start. */
  readonly other?: { readonly plugs: number; readonly startA: Amps };
}

export interface PoweredDrive {
  readonly id: string;
  /** On the rail that the branch is rated for. All drives of a branch are taken to start at once. */
  readonly startA: Amps;
  /** Where it is plugged now; it stays there if nothing speaks against it. */
  readonly on?: string;
  readonly pinned?: string;
}

/** Why a drive has no branch. */
export type NoBranch =
  | { readonly code: 'no-branch-left' }
  /** The chosen one is gone, or comes from no outlet. */
  | { readonly code: 'pinned-unknown' }
  /** It would take more than what the chosen one has for drives. */
  | { readonly code: 'pinned-overloaded'; readonly startA: Amps; readonly leftA: Amps }
  | { readonly code: 'pinned-taken' };

interface DriveOnBranch {
  readonly drive: string;
  readonly branch?: string;
  readonly moved: boolean;
  /** Only where it has none. */
  readonly reason?: NoBranch;
}

interface BranchPlan {
  readonly drives: readonly DriveOnBranch[];
  readonly branches: readonly {
    readonly branch: string;
    /** With what is on it beside drives. */
    readonly used: number;
    /** When all that is on it starts. */
    readonly loadA: Amps;
  }[];
  readonly proven: boolean;
}

const MA_PER_A = 1_000;

/** A branch for every drive with plugs and current enough: as many as can be, as few moved as can be. */
export function drivesToBranches(
  drives: readonly PoweredDrive[],
  branches: readonly SupplyBranch[],
): BranchPlan {
  const items = drives.map(({ startA, on, pinned }) => ({
    takes: [1, milliamps(startA)],
    weight: 1,
    costs: branches.map(({ id }) => {
      if (pinned !== undefined && pinned !== id) return undefined;
      return on === undefined || on === id ? 0 : 1;
    }),
  }));
  const room = branches.map((branch) => [plugsLeft(branch), milliampsLeft(branch)]);
  const { places, proven } = allot(items, room);
  return {
    proven,
    drives: drives.map((drive, at): DriveOnBranch => {
      const { id, on } = drive;
      const branch = branches[places[at] ?? -1]?.id;
      if (branch === undefined)
        return { drive: id, moved: on !== undefined, reason: whyNoBranch(drive, branches) };
      return { drive: id, branch, moved: on !== undefined && on !== branch };
    }),
    branches: branches.map(({ id, other }, at) => {
      const own = items.filter((_, item) => places[item] === at);
      const loadMa = own.reduce((sum, { takes }) => sum + (takes[1] ?? 0), milliamps(other?.startA ?? 0));
      return { branch: id, used: own.length + (other?.plugs ?? 0), loadA: loadMa / MA_PER_A };
    }),
  };
}

function plugsLeft({ connectors, other }: SupplyBranch): number {
  return Math.max(0, connectors - (other?.plugs ?? 0));
}

function milliampsLeft({ ratedA, other }: SupplyBranch): number {
  return Math.max(0, milliamps(ratedA) - milliamps(other?.startA ?? 0));
}

function milliamps(amps: Amps): number {
  return Math.round(amps * MA_PER_A);
}

function whyNoBranch({ startA, pinned }: PoweredDrive, branches: readonly SupplyBranch[]): NoBranch {
  if (pinned === undefined) return { code: 'no-branch-left' };
  const branch = branches.find(({ id }) => id === pinned);
  if (branch === undefined) return { code: 'pinned-unknown' };
  const leftMa = milliampsLeft(branch);
  if (milliamps(startA) <= leftMa) return { code: 'pinned-taken' };
  return { code: 'pinned-overloaded', startA, leftA: leftMa / MA_PER_A };
}
