import type { Build, Seat } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import type { Lead } from '../../../boards/document/lead';
import type { Fit } from '../../../boards/fit/fit';
import { fitSeat } from '../../../boards/fit/fit-seat';
import { makeConnector } from '../../../boards/library/make-connector';
import { makeLead } from '../../../boards/library/make-lead';

/** A library lead beside one library connector, nothing else on the board. */
export function benchOf(
  leadType: string,
  connectorType: string,
): { build: Build; lead: Lead; connector: Connector } {
  const connector = makeConnector(connectorType, {
    id: 'header',
    print: 'HEADER',
    place: { xMm: 50, yMm: 50, turn: 0 },
  });
  const lead = makeLead(leadType, { id: 'lead', name: 'Lead' });
  const build: Build = {
    format: 'leadwright/build',
    version: 1,
    id: 'bench',
    name: 'Bench',
    board: {
      format: 'leadwright/board',
      version: 1,
      id: 'board',
      name: 'Board',
      outline: { widthMm: 100, depthMm: 100 },
      connectors: [connector],
    },
    case: { format: 'leadwright/case', version: 1, id: 'case', name: 'Case', leads: [lead] },
    extras: [],
    seats: [],
    view: { turn: 0, mirrored: false },
  };
  return { build, lead, connector };
}

type Where = Partial<Pick<Seat, 'plug' | 'at' | 'turn'>>;

export function seatOn({ plug = 'plug', at = [0, 0], turn = 0 }: Where = {}): Seat {
  return { lead: 'lead', plug, connector: 'header', at, turn };
}

/** What geometry says of a library plug on a library connector, as it lies there first cell on first cell. */
export function tried(leadType: string, connectorType: string, where: Where = {}): Fit {
  return fitSeat(benchOf(leadType, connectorType).build, seatOn(where));
}
