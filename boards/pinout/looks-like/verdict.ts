import { GAP, type PinCode, UNKNOWN } from './pin-code';

/** How the pins in one place compare. */
export type Verdict =
  | 'agree'
  /** Of one pair, or of the same effect on a circuit, or the same in the eyes of another source. */
  | 'partly'
  | 'differ'
  | 'unknown-there'
  | 'unknown-here'
  | 'both-unknown';

/** What a pin known here adds to a match beside the 1 of one that agrees and the 0 of one that differs. */
export const WORTH = { partly: 0.5, unsaid: 0.25 } as const;

/** A missing pin can be seen, and nearly every header is told from its neighbours by it. */
export const KEY_WEIGHT = 3;

export function verdictOn(here: PinCode, there: PinCode): Verdict {
  if (here.signal === UNKNOWN) return there.signal === UNKNOWN ? 'both-unknown' : 'unknown-here';
  if (there.signal === UNKNOWN) return 'unknown-there';
  if (here.signal === there.signal) return 'agree';
  if (here.signal === GAP || there.signal === GAP) return 'differ';
  return related(here, there) ? 'partly' : 'differ';
}

function related(here: PinCode, there: PinCode): boolean {
  return (
    (here.job !== 0 && here.job === there.job && here.line === there.line) ||
    (here.kin !== 0 && here.kin === there.kin) ||
    here.others.includes(there.signal) ||
    there.others.includes(here.signal)
  );
}
