import type { SuspectedFault } from '../../../../boards/diagnosis/log/reckoning';
import type { Build, Seat } from '../../../../boards/document/build';
import { type PlugRef, samePlug, sameSeat, seatOf } from '../../../../boards/document/lookup';

/** Where the plugs of a suspected fault would be, beside where they are written down. */
export type SuspectedPlace =
  | { readonly kind: 'moved'; readonly now: Seat; readonly seat: Seat }
  | { readonly kind: 'exchanged'; readonly seats: readonly [Seat, Seat] }
  | { readonly kind: 'off'; readonly plug: PlugRef }
  /** Just as it is written down: it sits there in the drawing, or is not on it. */
  | { readonly kind: 'as-written' };

/** The place that a fault is about; undefined where it is about none, or about none on this build. */
export function suspectedPlace(build: Build, fault: SuspectedFault | undefined): SuspectedPlace | undefined {
  if (fault?.off) return seatOf(build, fault.off) ? { kind: 'off', plug: fault.off } : { kind: 'as-written' };
  if (!fault?.seat) return undefined;
  const { seat } = fault;
  const now = seatOf(build, seat);
  if (now === undefined) return undefined;
  if (sameSeat(now, seat)) return { kind: 'as-written' };
  const there = build.seats.find((each) => !samePlug(each, seat) && sameSeat(each, seat));
  if (there === undefined) return { kind: 'moved', now, seat };
  const { connector, at, turn } = now;
  return { kind: 'exchanged', seats: [seat, { ...there, connector, at, turn }] };
}
