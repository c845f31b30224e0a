import { type Circuit, circuitOf } from '../circuit/circuit';
import type { Build, Seat } from '../document/build';
import type { Lead, Plug } from '../document/lead';
import { leadsOf, type PlugRef, plugKey } from '../document/lookup';
import type { Fit } from '../fit/fit';
import { fitPlug } from '../fit/fit-seat';
import { type Joint, jointsKept } from '../fit/joints';
import { properSeats } from '../fit/proper-seats';
import { type SeatedPlug, seatedPlugs } from '../fit/seated-plug';
import { type SeatedPart, seatedPartsOf } from './seated-part';

/** A plug on the board with all that the rules ask about it. */
export interface CheckedPlug extends SeatedPlug {
  readonly ref: PlugRef;
  readonly fit: Fit;
  readonly joints: readonly Joint[];
  /** The parts its wires end at, each with all its legs: those of the lead's other plugs too. */
  readonly parts: readonly SeatedPart[];
}

/** A plug that sits nowhere. */
export interface LoosePlug {
  readonly ref: PlugRef;
  readonly lead: Lead;
  readonly plug: Plug;
}

/** What every rule reads. Made once for a check; what costs time is worked out when first asked for. */
export interface CheckContext {
  readonly build: Build;
  readonly plugs: readonly CheckedPlug[];
  readonly loose: readonly LoosePlug[];
  readonly parts: readonly SeatedPart[];
  readonly joints: readonly Joint[];
  /** What would flow; solved only as far as it is asked. */
  readonly circuit: Circuit;
  /** Where a plug would be right and could be put now, best first. */
  readonly properSeats: (ref: PlugRef) => readonly Seat[];
  /** Where a plug would be right if every other plug were off. */
  readonly properSeatsWhenBare: (ref: PlugRef) => readonly Seat[];
}

/** Reads a build once for all rules. */
export function contextOf(build: Build): CheckContext {
  const wired = seatedPlugs(build).map((seated) => ({ seated, joints: jointsKept(seated) }));
  const joints = wired.flatMap((plug) => plug.joints);
  const parts = seatedPartsOf(joints);
  const partsById = new Map(parts.map((part) => [part.part, part]));
  const bare: Build = { ...build, seats: [] };
  return {
    build,
    joints,
    get circuit() {
      return circuitOf(build);
    },
    parts,
    plugs: wired.map(({ seated, joints: own }) => {
      let fit: Fit | undefined;
      return {
        ...seated,
        ref: { lead: seated.lead.id, plug: seated.plug.id },
        get fit() {
          fit ??= fitPlug(build, seated);
          return fit;
        },
        joints: own,
        parts: [...new Set(own.map(({ part }) => part))].flatMap(
          (part) => (part && partsById.get(part)) ?? [],
        ),
      };
    }),
    loose: loosePlugs(build),
    properSeats: remembered((ref) => properSeats(build, ref)),
    properSeatsWhenBare: remembered((ref) => properSeats(bare, ref)),
  };
}

function loosePlugs(build: Build): readonly LoosePlug[] {
  const seated = new Set(build.seats.map(plugKey));
  return leadsOf(build).flatMap((lead) =>
    lead.plugs
      .map((plug) => ({ ref: { lead: lead.id, plug: plug.id }, lead, plug }))
      .filter(({ ref }) => !seated.has(plugKey(ref))),
  );
}

function remembered(find: (ref: PlugRef) => readonly Seat[]): (ref: PlugRef) => readonly Seat[] {
  const known = new Map<string, readonly Seat[]>();
  return (ref) => {
    const seats = known.get(plugKey(ref)) ?? find(ref);
    known.set(plugKey(ref), seats);
    return seats;
  };
}
