import type { Amps } from '../../base/units';
import type { NoBranch } from './branches';
import type { FanOnHeader, HeaderLoad } from './fans';
import type { Missing } from './moves';
import type { DriveOnPort } from './ports';

/** Published papers and habits that assignments rest on. */
export const ASSIGN_SOURCES = {
  ports:
    'Serial ATA revisions 1 to 3: 1.5, 3 and 6 Gb/s; 8b/10b sends ten bits for each byte (from a reference page)',
  fans: '4-Wire PWM Controlled Fans Specification rev. 1.3 (2005), 2.1.2: up to 2.2 A at the start; the ratings are your board’s',
} as const;

/** Why a drive has its data port, or none. */
export function portWords({ drive, port, pinned, reason }: DriveOnPort): string {
  const chosen = pinned ? ' You chose this port.' : '';
  switch (reason.code) {
    case 'full-speed':
      return `${drive} goes on ${port ?? ''}: it moves up to ${speed(reason.needsMBps)}, the port up to ${speed(reason.portMBps)}.${chosen}`;
    case 'slowed':
      return `${drive} goes on ${port ?? ''} and is slowed: it could move ${speed(reason.needsMBps)}, the port moves up to ${speed(reason.portMBps)}.${chosen}`;
    case 'no-port-left':
      return `No port is left for ${drive}. Take another drive out, or free an M.2 place that switches ports off.`;
    case 'no-ports':
      return `The board’s sheet has no port for the data cable of ${drive}. Write its ports down in Document.`;
    case 'pinned-off':
      return `${reason.port}, chosen for ${drive}, is off while something is in ${reason.m2}. Choose another port, or empty that place; the board’s manual has the table.`;
    case 'pinned-taken':
      return `${reason.port}, chosen for ${drive}, is taken by another drive chosen for it. Choose another port for one of them.`;
    case 'pinned-unknown':
      return `The board has no port ${reason.port}, which was chosen for ${drive}. Choose one that is there.`;
  }
}

/** Where a fan goes: what a person calls the header or the hub on it, and what is printed at the outlet of that. */
interface FanPlace extends Pick<FanOnHeader, 'fan' | 'header' | 'reason'> {
  readonly outlet?: string;
}

/** Why a fan has its header, or none. */
export function fanPlaceWords({ fan, header = '', outlet, reason }: FanPlace): string {
  switch (reason.code) {
    case 'placed': {
      const where = outlet === undefined ? header : `outlet\u00a0${outlet} of ${header}`;
      const unseen = reason.reports ? '' : ' Its speed is not reported to the board.';
      const unwatched = reason.astray
        ? ' The board does not watch this header for the processor’s fan, and it may carry too little: see the board’s manual before power.'
        : '';
      return `${fan} goes on ${where}: ${SPEED_WORDS[reason.speed]}.${unseen}${unwatched}`;
    }
    case 'no-header-left':
      return `No header has a place and current left for ${fan}. A hub fed from the supply unit would carry it.`;
    case 'no-headers':
      return `The board’s sheet has no header for ${fan}. Write its fan headers down in Document.`;
    case 'no-watched-header':
      return `${fan} cools the processor and needs a header that the board watches and that sees its speed; there is none. Do not start without it.`;
    case 'fits-none':
      return `The plug of ${fan} enters no fan header: it goes on a plug of the supply unit that is made for it.`;
    case 'pinned-no-fit':
      return `The plug of ${fan} does not enter the chosen header. Choose another.`;
    case 'pinned-unknown':
      return `The header chosen for ${fan} is not there. Choose another.`;
    case 'pinned-overloaded':
      return `${fan} takes ${amps(reason.startA)} at its start, the chosen header may carry ${amps(reason.ratedA)}. Choose another, or a hub fed from the supply unit.`;
    case 'pinned-taken':
      return `What is chosen for the same header leaves no place or current for ${fan}. Choose another for one of them.`;
  }
}

const SPEED_WORDS = {
  'by-pulses': 'its speed is set by pulses',
  'by-voltage': 'its speed is set by the voltage',
  'always-full': 'it always runs at full speed there',
} as const;

/** What a header, or the supply of its hub, has to carry. "header": what a person calls it. */
export function loadWords({ header, runningA, startA, ratedA, from }: HeaderLoad): string {
  const source = from === 'header' ? header : `${header}, fed from the supply unit,`;
  return `${source} carries ${amps(runningA)} while its fans run and ${amps(startA)} when all start at once, of ${amps(ratedA)}.`;
}

/** A drive on a cable of the supply, with what the whole cable carries then. */
interface DriveOnBranch {
  readonly drive: string;
  readonly branch?: string;
  readonly moved: boolean;
  /** It is on none now. */
  readonly loose?: boolean;
  /** What lies between the two, where it stays behind that. */
  readonly through?: string;
  readonly reason?: NoBranch;
  readonly load?: BranchLoad;
}

interface BranchLoad {
  readonly loadA: Amps;
  readonly ratedA: Amps;
  readonly used: number;
  readonly plugs: number;
  /** Other things than drives are on it as well. */
  readonly isMixed: boolean;
}

/** Which cable of the supply a drive hangs on, and what that cable carries. */
export function branchWords({ drive, branch, moved, loose, through, reason, load }: DriveOnBranch): string {
  if (branch === undefined) return noBranchWords(drive, reason ?? { code: 'no-branch-left' });
  const what = load?.isMixed === true ? 'all that is known of what is on it takes' : 'all drives on it take';
  const carried =
    load === undefined
      ? ''
      : ` ${plugWords(load)} in use; ${what} ${amps(load.loadA)} at the start, of ${amps(load.ratedA)}.`;
  const behind = through === undefined || moved ? '' : ` by ${through}`;
  const goes = loose ? 'goes on' : 'hangs on';
  return `${drive} ${moved ? 'moves to' : goes} ${branch}${behind}.${carried}`;
}

function plugWords({ used, plugs }: BranchLoad): string {
  if (plugs === 1) return 'Its one plug is';
  return `${used} of its ${plugs}\u00a0plugs ${used === 1 ? 'is' : 'are'}`;
}

function noBranchWords(drive: string, reason: NoBranch): string {
  switch (reason.code) {
    case 'no-branch-left':
      return `No cable of the supply has a plug and current left for ${drive}. Another one from the same supply would carry it; no cable of another supply.`;
    case 'no-branches':
      return `No cable on an outlet of a supply has a plug for ${drive}. Add the supply with its cables, or plug in the cable at the supply.`;
    case 'pinned-unknown':
      return `The cable chosen for ${drive} is not there, or on no outlet of the supply. Choose another.`;
    case 'pinned-overloaded':
      return `${drive} takes ${amps(reason.startA)} at its start, the chosen cable has ${amps(reason.leftA)} for drives. Choose another.`;
    case 'pinned-taken':
      return `What else is on the cable chosen for ${drive}, or chosen for it, leaves no plug or current. Choose another for one of them.`;
  }
}

/** Why what goes somewhere cannot be moved there. */
export function missingWords({ of, code }: Missing): string {
  switch (code) {
    case 'no-lead':
      return `${of} has no cable that reaches there. Plug one in first.`;
    case 'no-fit':
      return `The plug of ${of} does not fit there.`;
    case 'in-the-way':
      return `A plug that stays is in the way of ${of}. Take that off first.`;
  }
}

/** What is said of a plan that could not be proved; nothing of one that was. */
export function provenWords({ proven }: { readonly proven: boolean }): string | undefined {
  return proven
    ? undefined
    : 'This is the best that was found; a better one may exist. Choose some places yourself and ask again.';
}

function speed(megabytes: number): string {
  return `${megabytes}\u00a0MB/s`;
}

function amps(value: Amps): string {
  return `${value.toFixed(2)}\u00a0A`;
}
