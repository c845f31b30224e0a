import type { Amps } from '../base/units';
import { USUAL } from '../circuit/corner';
import { pinNode } from '../circuit/elements';
import { tripOf } from '../circuit/readings/fuses';
import type { CheckContext } from './context';
import type { OnPin } from './seated-part';

/** The current at which a fuse behind a supply pin would trip, as data; nothing where none would. */
export function tripAt({ circuit }: CheckContext, { joint, pin }: OnPin): { readonly tripAmps?: Amps } {
  const tripAmps = tripOf(circuit, pinNode(joint.connector.id, pin.pin), USUAL);
  return tripAmps === undefined ? {} : { tripAmps };
}
