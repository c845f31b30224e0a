import type { Build, Seat } from '../document/build';
import { leadsOf, type PlugRef, samePlug, sameSeat, seatOf } from '../document/lookup';
import type { Command } from '../edit/command';
import { boxesCollide } from '../fit/geometry';
import { layDown } from '../fit/laid-plug';
import { seatedPlug } from '../fit/seated-plug';

/** One plug that the plan has elsewhere than the person. */
export interface Difference {
  readonly plug: PlugRef;
  readonly now: Seat | undefined;
  readonly planned: Seat | undefined;
  /** Plugs that sit where this one would go, and come off with it; they are differences too. */
  readonly inTheWay: readonly PlugRef[];
}

/** The wiring beside a plan, plug by plug in the order of the leads. None where they are the same. */
export function differencesTo(build: Build, planned: readonly Seat[]): readonly Difference[] {
  return leadsOf(build).flatMap((lead) =>
    lead.plugs.flatMap((plug): readonly Difference[] => {
      const ref = { lead: lead.id, plug: plug.id };
      const now = seatOf(build, ref);
      const then = planned.find((seat) => samePlug(seat, ref));
      if (now === then || (now && then && sameSeat(now, then))) return [];
      return [{ plug: ref, now, planned: then, inTheWay: then ? plugsUnder(build, then) : [] }];
    }),
  );
}

function plugsUnder(build: Build, planned: Seat): readonly PlugRef[] {
  const { body } = layDown(seatedPlug(build, planned));
  return build.seats
    .filter((seat) => !samePlug(seat, planned) && boxesCollide(layDown(seatedPlug(build, seat)).body, body))
    .map(({ lead, plug }) => ({ lead, plug }));
}

/** What brings the named differences about, as one step. */
export function takingOver(differences: readonly Difference[]): Extract<Command, { name: 'arrange-plugs' }> {
  const seats = differences.flatMap(({ planned }) => planned ?? []);
  const off = differences.flatMap(({ plug, planned, inTheWay }) =>
    planned === undefined ? [plug] : inTheWay,
  );
  const gone = off.filter(
    (ref, at) =>
      !seats.some((seat) => samePlug(seat, ref)) && off.findIndex((each) => samePlug(each, ref)) === at,
  );
  return { name: 'arrange-plugs', args: { seats, off: gone.map(({ lead, plug }) => ({ lead, plug })) } };
}
