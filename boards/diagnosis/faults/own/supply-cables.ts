import type { Build, Seat } from '../../../document/build';
import type { Connector } from '../../../document/connector';
import type { Lead, Plug } from '../../../document/lead';
import { anyConnectorOf, leadsOf, seatOf, unitWith } from '../../../document/lookup';
import { powerJobOf, SOLDERED } from '../../../document/power-job';
import type { FitRefusal } from '../../../fit/fit';
import { fitSeat } from '../../../fit/fit-seat';
import { withOnly } from '../showing';
import { isInlet } from './feed';

/** A plug of a cable that brings power, where it sits. */
export interface PowerPlug {
  readonly lead: Lead;
  readonly plug: Plug;
  readonly seat: Seat;
  readonly connector: Connector;
  /** At the supply, at what takes the power, or at a hub or an adapter between the two. */
  readonly end: 'outlet' | 'inlet' | 'between';
  /** Its shape keeps it from going in so: of another kind, or the wrong way round. */
  readonly forced: boolean;
}

/** The cables of a build that bring power, and where they sit. */
export interface PowerCables {
  /** The build with these leads alone. */
  readonly build: Build;
  /** Plugs that can be taken off; wires that are soldered in stay. */
  readonly plugs: readonly PowerPlug[];
  readonly loose: readonly Pick<PowerPlug, 'lead' | 'plug'>[];
}

/** Cables with a plug for power or at a supply; what is set aside on purpose is none of them. */
export function powerCablesOf(whole: Build): PowerCables {
  const leads = leadsOf(whole).filter((lead) => lead.setAside !== true && bringsPower(whole, lead));
  const build = withOnly(
    whole,
    leads.map(({ id }) => id),
  );
  const all = leads.flatMap((lead) =>
    lead.plugs
      .filter(({ family }) => family !== SOLDERED)
      .map((plug) => ({ lead, plug, seat: seatOf(build, { lead: lead.id, plug: plug.id }) })),
  );
  return {
    build,
    plugs: all.flatMap(({ lead, plug, seat }): readonly PowerPlug[] => {
      const connector = seat && anyConnectorOf(build, seat.connector);
      if (!connector) return [];
      return [{ lead, plug, seat, connector, end: endAt(build, connector), forced: isForced(build, seat) }];
    }),
    loose: all.filter(({ seat }) => seat === undefined),
  };
}

function bringsPower(build: Build, lead: Lead): boolean {
  return lead.plugs.some((plug) => {
    const connector = seatOf(build, { lead: lead.id, plug: plug.id })?.connector;
    const unit = connector === undefined ? undefined : unitWith(build, connector);
    return unit?.kind === 'supply' || powerJobOf({ family: plug.family, pins: [] }) !== undefined;
  });
}

const BY_FORCE: ReadonlySet<FitRefusal['code']> = new Set<FitRefusal['code']>(['family', 'guide', 'rib']);

/** Whether a plug's shape, and nothing else, keeps it from sitting there. */
export function isForced(build: Build, seat: Seat): boolean {
  const { refusals } = fitSeat(build, seat);
  return refusals.length > 0 && refusals.every(({ code }) => BY_FORCE.has(code));
}

function endAt(build: Build, connector: Connector): PowerPlug['end'] {
  if (unitWith(build, connector.id)?.kind === 'supply') return 'outlet';
  return isInlet(build, connector) ? 'inlet' : 'between';
}
