import type { Amps } from '../base/units';
import { USUAL } from '../circuit/corner';
import { tripOf } from '../circuit/readings/fuses';
import { nodeOf } from './about';
import type { CheckContext } from './context';
import type { OnPin } from './seated-part';

/** The current at which a fuse behind a supply pin would trip, as data; nothing where none would. */
export function tripAt({ circuit }: Pick<CheckContext, 'circuit'>, on: OnPin): { readonly tripAmps?: Amps } {
  const tripAmps = tripOf(circuit, nodeOf(on), USUAL);
  return tripAmps === undefined ? {} : { tripAmps };
}
