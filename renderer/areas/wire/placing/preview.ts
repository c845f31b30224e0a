import { analyse } from '../../../../boards/analyse';
import type { Build, Seat } from '../../../../boards/document/build';
import { applyCommand } from '../../../../boards/edit/apply';
import { type Finding, findingId } from '../../../../boards/findings/finding';
import type { Fit } from '../../../../boards/fit/fit';
import { fitSeat } from '../../../../boards/fit/fit-seat';

/** What a plug would do in a place, before it goes there. */
export interface Preview {
  readonly fit: Fit;
  /** Findings that would come; none where it does not fit. */
  readonly coming: readonly Finding[];
  /** Findings of now that would go. */
  readonly going: readonly Finding[];
  /** The build as it would be; undefined where it does not fit. */
  readonly build?: Build;
}

/** Tries a seat on a copy of the build. */
export function previewSeat(build: Build, seat: Seat): Preview {
  const fit = fitSeat(build, seat);
  const result = applyCommand(build, { name: 'seat-plug', args: seatArgs(seat) });
  if (!result.ok) return { fit, coming: [], going: [] };
  const now = analyse(build).findings;
  const then = analyse(result.value).findings;
  return { fit, coming: without(then, now), going: without(now, then), build: result.value };
}

/** A seat as the command takes it. */
export function seatArgs({ lead, plug, connector, at, turn }: Seat): Seat {
  return { lead, plug, connector, at, turn };
}

function without(findings: readonly Finding[], others: readonly Finding[]): readonly Finding[] {
  const known = new Set(others.map(findingId));
  return findings.filter((finding) => !known.has(findingId(finding)));
}
