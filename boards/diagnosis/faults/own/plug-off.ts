import type { Build, Seat } from '../../../document/build';
import { connectorName, leadName } from '../../../document/names';
import { seatingId } from '../seating-id';
import type { OwnFault } from './share-out';

/** What a plug is that is not in at a connector. */
export function plugOff(
  build: Build,
  { lead, plug, connector }: Pick<Seat, 'lead' | 'plug' | 'connector'>,
): OwnFault {
  return {
    id: seatingId({ lead, plug }, 'off'),
    name: `${leadName(build, lead)} is not in at ${connectorName(build, connector)}.`,
    lead,
    off: { lead, plug },
  };
}
