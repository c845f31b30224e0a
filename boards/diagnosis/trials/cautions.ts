import type { Trial } from './trial';

const MAINS_ON =
  'Mains is on for a part of this trial. While it is, hands, tools and rings stay off the board, except as the steps say. At smell, smoke, heat or sparks pull the mains plug at once.';
const MAINS_OFF =
  'Mains plug out, supply switch off, every light on the board gone out, and yourself discharged on bare metal, before you touch anything inside.';

/** What single trials need besides. */
const ALSO: Readonly<Record<string, string>> = {
  'bare-pins':
    'If you are not sure which two pins these are, do not touch any: ask somebody who knows the board.',
  'measure-standby': 'Only for somebody who is used to measuring on a live machine. Never open the supply.',
  'other-supply': 'Never mix cables of two supplies, even if the plugs fit.',
  'one-memory-module': 'Hold modules by their edges, and discharge yourself before each one.',
  'out-of-case': 'No metal under the board, and nothing that can slip onto it.',
};

/** What to mind at a trial, beside its steps. */
export function trialCautions({ id, powered }: Pick<Trial, 'id' | 'powered'>): readonly string[] {
  const also = ALSO[id];
  return [powered ? MAINS_ON : MAINS_OFF, ...(also === undefined ? [] : [also])];
}
