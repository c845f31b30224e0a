import { byIdentity } from '../../base/by-identity';
import type { Build } from '../../document/build';
import { leadsOf, type PlugRef, samePlug, sameSeat, seatOf } from '../../document/lookup';
import { findingsOf } from '../../findings/findings';
import { properSeats } from '../../fit/proper-seats';
import type { Fault } from './fault';
import { faultsHang, machineOf, NO_PRIORS, plainFaultsOf } from './faults';
import { writtenFaults } from './own/own-faults';
import { weighedBy } from './priors';
import { placeId } from './seating-id';

/** How likely what is written down as wrong is the trouble, beside everything else together. */
const WRITTEN_SHARE = 0.5;

/**
 * Everything that may be wrong with a machine, taken from its wiring as it is meant: where the build itself has a
 * plug on wrong pins, or off, a cable of another supply, or a standoff that touches the board, that is one of the
 * faults, and weighs as much as all the others together. Only then come the factors of the build, so that they
 * count for what is written too.
 */
export const faultsAsWritten = byIdentity(
  (build: Build): readonly Fault[] => weighedBy(plainAsWritten(build), build.priors ?? NO_PRIORS),
  faultsHang,
);

/** Kept while the machine stays the same: to weigh a cause otherwise solves nothing anew. */
const plainAsWritten = byIdentity((build: Build): readonly Fault[] => {
  const wrong = wrongPlugs(build);
  const meant = wrong.reduce(putRight, build);
  const own = new Set(writtenFaults(meant));
  if (wrong.length + own.size === 0) return plainFaultsOf(build);
  const written = new Set(
    wrong.map((plug) => {
      const seat = seatOf(build, plug);
      return `${plug.lead}/${plug.plug}/${seat ? placeId(seat) : ''}`;
    }),
  );
  const faults = plainFaultsOf(meant);
  const isWritten = ({ id }: Fault) => {
    const [lead, plug, , where] = id.split('/');
    return own.has(id) || written.has(`${lead}/${plug}/${where}`);
  };
  const count = faults.filter(isWritten).length;
  if (count === 0) return faults;
  const others = faults.reduce((sum, fault) => sum + (isWritten(fault) ? 0 : fault.weight), 0);
  const weight = (others * WRITTEN_SHARE) / (1 - WRITTEN_SHARE) / count;
  return faults.map((fault) => (isWritten(fault) ? { ...fault, weight } : fault));
}, machineOf);

/** Plugs that the checks find a danger or a fault with, and that have a proper place elsewhere. */
function wrongPlugs(build: Build): readonly PlugRef[] {
  const leads = new Set(
    findingsOf(build)
      .filter(({ severity }) => severity === 'danger' || severity === 'fault')
      .flatMap((finding) => finding.leads),
  );
  return leadsOf(build)
    .filter(({ id, setAside }) => leads.has(id) && !setAside)
    .flatMap(({ id: lead, plugs }) => plugs.map((plug) => ({ lead, plug: plug.id })))
    .filter((plug) => {
      const proper = properSeats(without(build, plug), plug);
      const now = seatOf(build, plug);
      return proper.length > 0 && !proper.some((seat) => now && sameSeat(seat, now));
    });
}

/** The plug in its best place; left where it is while another plug has that place. */
function putRight(build: Build, plug: PlugRef): Build {
  const off = without(build, plug);
  const [best] = properSeats(off, plug);
  if (best === undefined) return build;
  const now = build.seats.findIndex((seat) => samePlug(seat, plug));
  return { ...build, seats: now < 0 ? [...build.seats, best] : build.seats.with(now, best) };
}

function without(build: Build, plug: PlugRef): Build {
  return { ...build, seats: build.seats.filter((seat) => !samePlug(seat, plug)) };
}
