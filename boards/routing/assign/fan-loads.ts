import type { Amps } from '../../base/units';
import { type BuildFans, fansOn } from './build-fans';
import { type Fan, type HeaderLoad, sumOf } from './fans';
import type { HungHub } from './hubs';

/** What a header or a hub has to carry of the fans as they are plugged in now. */
export interface FanLoad extends HeaderLoad {
  /** The hub that is rated, by itself or together with the header that it is on. */
  readonly hub?: HungHub;
  readonly fans: readonly string[];
}

/** By header and by hub, each with all that is behind it; only those with a fan there. */
export function fanLoads(ofFans: BuildFans): readonly FanLoad[] {
  return ofFans.headers.flatMap(({ id, ratedA }) => {
    const units = ofFans.hubs.get(id)?.units ?? [];
    const [first, ...more] = units;
    const isShared = more.some(({ on }) => on === first?.on);
    const from = first?.rating.fedBy ?? 'header';
    // Fed from its header, a hub gives what the two of them may carry; what shares a header is rated by itself.
    const hub = isShared ? undefined : first;
    const both = Math.min(from === 'supply' ? Infinity : ratedA, hub?.rating.amps ?? Infinity);
    const own = fansOn(ofFans, id);
    const below = (isShared ? units : more).map((each): FanLoad => {
      const connectors = behind(each, units);
      const fans = own.filter((fan) => connectors.includes(ofFans.now.get(fan.id)?.connector ?? ''));
      return loadOf(each.on ?? id, fans, { ratedA: each.rating.amps, from: 'header', hub: each });
    });
    const whole = loadOf(id, own, { ratedA: both, from, ...(hub && { hub }) });
    return [whole, ...below].filter(({ fans }) => fans.length > 0);
  });
}

function loadOf(header: string, fans: readonly Fan[], by: Pick<FanLoad, 'ratedA' | 'from' | 'hub'>): FanLoad {
  return { header, ...sumOf(fans), ...by, fans: fans.map(({ id }) => id) };
}

/** The outlets of a hub, and of all that hang on it. */
function behind(hub: HungHub, units: readonly HungHub[]): readonly string[] {
  const further = units.filter(({ on }) => on !== undefined && hub.outlets.includes(on));
  return [...hub.outlets, ...further.flatMap((each) => behind(each, units))];
}

/** By hub that the supply feeds: what its fans take at the start, as they are or as they will be, whichever is more. */
export function hubAmps(ofFans: BuildFans, planned: readonly HeaderLoad[]): ReadonlyMap<string, Amps> {
  const most = new Map<string, Amps>();
  for (const { header, from, startA } of [...fanLoads(ofFans), ...planned]) {
    const hub = ofFans.hubs.get(header)?.units[0]?.unit.id;
    if (from === 'supply' && hub !== undefined) most.set(hub, Math.max(startA, most.get(hub) ?? 0));
  }
  return most;
}
