import type { Seat } from '../../document/build';
import type { PlugRef } from '../../document/lookup';

/** The id of the fault that a plug is seated wrongly: which, how, and where it then is; nowhere where it is off. */
export function seatingId({ lead, plug }: PlugRef, how: string, where = ''): string {
  return `${lead}/${plug}/${how}/${where}`;
}

/** A place as such ids name it. */
export function placeId({ connector, at, turn }: Seat): string {
  return `${connector}:${at.join('.')}:${turn}`;
}
