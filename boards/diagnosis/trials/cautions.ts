import type { Trial } from './trial';

const MAINS_ON =
  'Mains is on for a part of this trial. While it is, hands, tools and rings stay off the board, except as the steps say. At smell, smoke, heat or sparks pull the mains plug at once.';
const MAINS_OFF =
  'Mains plug out, supply switch off, every light on the board gone out, and yourself discharged on bare metal, before you touch anything inside.';

const RIGHT_PINS =
  'If you are not sure which two pins these are, do not touch any: ask somebody who knows the board.';
const RIGHT_HOLES =
  'If you are not sure which two holes of the plug these are, join none: ask somebody who knows the supply.';

/** At the one look at which the rear switch itself is looked at, and switched on. */
const OUTSIDE_ONLY =
  'Only from outside: nothing inside is touched, and nothing is put into a socket or a slot of the supply.';

/** What single trials need besides. */
const ALSO: Readonly<Record<string, string>> = {
  'bare-pins': RIGHT_PINS,
  'fewest-parts': RIGHT_PINS,
  'supply-alone': RIGHT_HOLES,
  'measure-standby': 'Only for somebody who is used to measuring on a live machine. Never open the supply.',
  'other-supply': 'Never mix cables of two supplies, even if the plugs fit.',
  'one-memory-module': 'Hold modules by their edges, and discharge yourself before each one.',
  'out-of-case': `No metal under the board, and nothing that can slip onto it. ${RIGHT_PINS}`,
};

/** What to mind at a trial, beside its steps. */
export function trialCautions({ id, powered }: Pick<Trial, 'id' | 'powered'>): readonly string[] {
  if (id === 'look-rear-switch') return [OUTSIDE_ONLY];
  const also = ALSO[id];
  return [powered ? MAINS_ON : MAINS_OFF, ...(also === undefined ? [] : [also])];
}
