import { describe, expect, it } from 'vitest';
import { fanFaults } from '../../../../boards/diagnosis/faults/own/fan-faults';
import type { HubRating } from '../../../../boards/document/rating';
import { makeConnector } from '../../../../boards/library/make-connector';
import { assignmentsOf } from '../../../../boards/routing/assign/assignments';
import { reportsSpeed } from '../../../../boards/routing/assign/build-fans';
import { type Bench, bench } from '../../findings/harness';
import { withFans } from './with-fans';

/** The header that is watched, for 1 A; on it the first hub, and the second on the outlet of that which reports a speed. */
function twoHubs(first: HubRating, second: HubRating): Bench {
  const header = makeConnector('fan-1x4', { id: 'cpu', print: 'CPU', place: { xMm: 20, yMm: 20, turn: 0 } });
  return bench()
    .connector({ ...header, rating: { amps: 1, watched: true } })
    .unit(`fan-hub-${first.fedBy}`, 'h1', { hub: { ...first, speedOutlet: 'h1-fan-1' } })
    .unit(`fan-hub-${second.fedBy}`, 'h2', { hub: { ...second, speedOutlet: 'h2-fan-2' } })
    .seat('h1-tail', 'cpu', '1', { plug: 'header' })
    .seat('h2-tail', 'h1-fan-1', '1', { plug: 'header' });
}

describe('a hub on an outlet of another', () => {
  const weak = { fedBy: 'header', amps: 4 } as const;

  it('has its fans on the header at the end of both tails', () => {
    const build = withFans(twoHubs(weak, weak), { a: 'h1-fan-2', b: 'h2-fan-2' });
    const { now } = assignmentsOf(build).ofFans;
    expect(now.get('a')).toEqual({ header: 'cpu', connector: 'h1-fan-2', end: 'cpu' });
    expect(now.get('b')).toEqual({ header: 'cpu', connector: 'h2-fan-2', end: 'cpu' });
  });

  it('gives its outlets beside those of the first, but for the one that it hangs on, and no more current', () => {
    const six = Object.fromEntries(['a', 'b', 'c', 'd', 'e', 'f'].map((id) => [id, undefined]));
    const { fans, ofFans } = assignmentsOf(withFans(twoHubs(weak, weak), six));
    expect(ofFans.hubs.get('cpu')?.outlets).toEqual([
      ...['h2-fan-2', 'h1-fan-2', 'h1-fan-3', 'h1-fan-4'],
      ...['h2-fan-1', 'h2-fan-3', 'h2-fan-4'],
    ]);
    // Two fans of 0.5 A at the start are all that 1 A starts.
    expect(fans.fans.filter(({ header }) => header === 'cpu')).toHaveLength(2);
  });

  it('is heard by the board at that outlet which both of them hand on', () => {
    const build = withFans(twoHubs(weak, weak), { a: 'h1-fan-2', b: 'h2-fan-2', c: 'h2-fan-1' });
    const { ofFans } = assignmentsOf(build);
    expect(['a', 'b', 'c'].filter((fan) => reportsSpeed(ofFans, fan))).toEqual(['b']);
  });

  it('is a place of its own where the supply feeds it, by the current of the supply', () => {
    const strong = { fedBy: 'supply', amps: 4 } as const;
    const six = Object.fromEntries(['a', 'b', 'c', 'd', 'e', 'f'].map((id) => [id, undefined]));
    const { fans } = assignmentsOf(withFans(twoHubs(weak, strong), six));
    // Six fans: 3.0 A at the start, within 4 A; the header by itself would start two of them.
    expect(fans.fans.every(({ header }) => header !== undefined)).toBe(true);
    expect(fans.fans.some(({ header }) => header === 'h2-fan-1')).toBe(true);
  });

  it('has no tail that is on nothing', () => {
    const build = withFans(twoHubs(weak, weak), { a: 'h2-fan-2' });
    const faults = fanFaults(build)['fan-hub'] ?? [];
    expect(faults.map(({ name }) => name)).not.toContain('H2 TAIL is on no fan header.');
    expect(faults.filter(({ isThere }) => isThere)).toEqual([]);
  });
});
