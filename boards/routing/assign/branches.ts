import type { Amps } from '../../base/units';
import { allot } from './allot';

/** A cable of the supply with several plugs for drives. */
export interface SupplyBranch {
  readonly id: string;
  /** Plugs for drives. */
  readonly connectors: number;
  /** Plugs with an adapter that a drive is behind: for the drives that are there, and no others. */
  readonly adapters?: number;
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
  /** It is there by an adapter. */
  readonly byAdapter?: boolean;
  readonly pinned?: string;
}

/** Why a drive has no branch. */
export type NoBranch =
  | { readonly code: 'no-branch-left' }
  /** No cable on an outlet of a supply has a plug for a drive. */
  | { readonly code: 'no-branches' }
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
  const adapted = branches.filter(({ adapters }) => adapters !== undefined);
  const items = drives.map(({ startA, on, byAdapter = false, pinned }) => ({
    // Also of the plugs without an adapter, of every branch that has some with one, but where it is by that.
    takes: [1, milliamps(startA), ...adapted.map(({ id }) => (byAdapter && on === id ? 0 : 1))],
    weight: 1,
    costs: branches.map(({ id }) => {
      if (pinned !== undefined && pinned !== id) return undefined;
      return on === undefined || on === id ? 0 : 1;
    }),
  }));
  const rooms = branches.map((branch) => {
    const plugs = plugsLeft(branch);
    const own = adapted.map((each) => (each === branch ? plugs : Infinity));
    return [plugs + (branch.adapters ?? 0), milliampsLeft(branch), ...own];
  });
  const { places, proven } = allot(items, rooms);
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

/** Whether it has plugs for drives, and not only adapters with drives behind them. */
export function hasOwnPlugs({ connectors }: SupplyBranch): boolean {
  return connectors > 0;
}

/** Its plugs for drives and those with an adapter that a drive is behind. */
export function plugsOf({ connectors, adapters = 0 }: SupplyBranch): number {
  return connectors + adapters;
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
  if (pinned === undefined) return { code: branches.some(hasOwnPlugs) ? 'no-branch-left' : 'no-branches' };
  const branch = branches.find(({ id }) => id === pinned);
  if (branch === undefined) return { code: 'pinned-unknown' };
  const leftMa = milliampsLeft(branch);
  if (milliamps(startA) <= leftMa) return { code: 'pinned-taken' };
  return { code: 'pinned-overloaded', startA, leftA: leftMa / MA_PER_A };
}
