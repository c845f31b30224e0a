import type { BuildFans } from './build-fans';
import type { FanOnHeader } from './fans';

/**
 * By fan: the header itself, or the very outlet of a hub, that it goes on. A fan keeps its outlet of the right
 * hub, unless the one that the board hears is to be, or to become, another's.
 */
export function fanConnectors(
  { hubs, now }: BuildFans,
  fans: readonly FanOnHeader[],
): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const hearing = (header: string) =>
    hubs.get(header)?.isHeard === true ? hubs.get(header)?.outlets[0] : undefined;
  const open: FanOnHeader[] = [];
  for (const each of fans) {
    const { fan, header, outlet } = each;
    if (header === undefined) continue;
    const hub = hubs.get(header);
    const heard = hearing(header);
    const sits = now.get(fan)?.connector;
    if (hub === undefined) found.set(fan, header);
    else if (heard !== undefined && outlet === 1) found.set(fan, heard);
    else if (sits !== undefined && sits !== heard && hub.outlets.includes(sits)) found.set(fan, sits);
    else open.push(each);
  }
  const taken = new Set(found.values());
  for (const { fan, header = '' } of open) {
    const free = hubs.get(header)?.outlets.find((id) => id !== hearing(header) && !taken.has(id));
    if (free === undefined) continue;
    taken.add(free);
    found.set(fan, free);
  }
  return found;
}
