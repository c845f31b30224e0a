import type { Build } from '../document/build';
import type { Connector } from '../document/connector';
import type { Part } from '../document/lead';
import { boxesCollide } from '../fit/geometry';
import { type LaidPlug, layDown } from '../fit/laid-plug';
import { seatedPlug } from '../fit/seated-plug';
import { signalOf } from '../signals/signals';
import type { Cost } from './cost';
import type { Group } from './group';
import { judge } from './judge';
import { seatsWorth } from './seats-worth';

/** One way of seating a group: where each of its plugs goes; those not named are left off. */
export interface Way {
  readonly laid: readonly LaidPlug[];
  readonly cost: Cost;
  readonly served: readonly Part[];
}

/** Ways of one group looked at before only the most promising seats of its plugs are. */
const WAYS_LIMIT = 20_000;

export interface Ways {
  readonly group: Group;
  /** The last is to leave everything off that is not pinned. */
  readonly ways: readonly Way[];
  /** Not every way could be looked at: the group has too many plugs with too many seats each. */
  readonly narrowed: boolean;
}

/**
 * Every way of seating a group that an optimum could need. Its plugs go to one connector; only a ground
 * may be taken elsewhere, where that connector has none. That wires of one part never go to two headers
 * otherwise is common practice, no source.
 */
export function waysOf(build: Build, group: Group): Ways {
  const seats = group.plugs.map((plug) => {
    const pinned = group.pinned.get(plug.id);
    return pinned ? [layDown(seatedPlug(build, pinned))] : seatsWorth(build.board, group.lead, plug);
  });
  const ways = new Map<string, Way>();
  let narrowed = false;
  for (const home of homesOf(seats)) {
    const options = seats.map((own, at) => {
      if (group.pinned.has(group.plugs[at]?.id ?? '')) return own;
      const there = own.filter(({ connector }) => connector === home);
      return [...(there.length > 0 ? there : own.filter(isOnGround)), undefined];
    });
    const cut = within(options);
    narrowed ||= cut.narrowed;
    combine(cut.kept, (laid) => {
      const key = laid.map(({ plug, seat }) => `${plug.id} ${seat.connector} ${seat.turn} ${seat.at}`).join();
      if (ways.has(key)) return;
      const way = { laid, ...judge(build.board, group, laid) };
      if (laid.length > group.pinned.size && helps(way, group)) ways.set(key, way);
    });
  }
  const left = seats.flatMap((own, at) => (group.pinned.has(group.plugs[at]?.id ?? '') ? own : []));
  const leftOff = { laid: left, ...judge(build.board, group, left) };
  return { group, ways: [...ways.values(), leftOff], narrowed };
}

/** The connectors on which some plug meets more than a ground. */
function homesOf(seats: readonly (readonly LaidPlug[])[]): readonly Connector[] {
  return [
    ...new Set(
      seats.flatMap((own) => own.filter((laid) => !isOnGround(laid)).map(({ connector }) => connector)),
    ),
  ];
}

function isOnGround({ landings }: LaidPlug): boolean {
  return landings.every(({ pin }) => pin?.signal === undefined || signalOf(pin.signal).nature === 'ground');
}

/** Every combination of one option for each plug whose bodies leave each other room; undefined leaves it off. */
function combine(
  options: readonly (readonly (LaidPlug | undefined)[])[],
  look: (laid: readonly LaidPlug[]) => void,
  at = 0,
  laid: readonly LaidPlug[] = [],
): void {
  const own = options[at];
  if (own === undefined) {
    look(laid);
    return;
  }
  for (const each of own) {
    if (each === undefined) combine(options, look, at + 1, laid);
    else if (!laid.some(({ body }) => boxesCollide(body, each.body)))
      combine(options, look, at + 1, [...laid, each]);
  }
}

/** Whether each plug that is not pinned serves a part; one that does not is better left off. */
function helps({ laid, served }: Way, { lead, pinned }: Group): boolean {
  return laid.every(
    ({ plug }) =>
      pinned.has(plug.id) ||
      lead.wires.some(({ from, to }) =>
        served.some(
          ({ id }) =>
            (from.startsWith(`${id}.`) && to.startsWith(`${plug.id}.`)) ||
            (to.startsWith(`${id}.`) && from.startsWith(`${plug.id}.`)),
        ),
      ),
  );
}

/** Cuts the longest lists of seats until all their combinations can be looked at. */
function within<T>(options: readonly (readonly (T | undefined)[])[]) {
  const kept = options.map((option) => [...option]);
  let narrowed = false;
  const product = () => kept.reduce((all, { length }) => all * length, 1);
  while (product() > WAYS_LIMIT) {
    const longest = kept.reduce((most, option) => (option.length > most.length ? option : most), []);
    if (longest.length <= 2) break;
    // The last is to leave it off, which has to stay.
    longest.splice(Math.ceil(longest.length / 2), Math.floor(longest.length / 2) - 1);
    narrowed = true;
  }
  return { kept, narrowed };
}
