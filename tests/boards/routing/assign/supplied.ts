import type { Connector } from '../../../../boards/document/connector';
import { makeLead } from '../../../../boards/library/make-lead';
import { type Bench, bench } from '../../findings/harness';
import { posts } from '../../fixtures/bench';

/** A cable by its type in the library, and what the outlet that it is on may give. */
type OnOutlet = readonly [type: string, amps: number];

/** A supply with an outlet of its own for each of these cables, by their ids, and the cables on it. */
export function supplied(cables: Readonly<Record<string, OnOutlet>>): Bench {
  const outlets = Object.entries(cables).map(([id, [type, amps]]): Connector => {
    const [plug] = makeLead(type, { id, name: id }).plugs;
    if (plug === undefined) throw new Error('The cable has a plug for the supply');
    return { ...posts(`out-${id}`, plug.grid, { family: plug.family }), rating: { amps } };
  });
  const supply = { id: 'psu', name: 'Supply', kind: 'supply' as const, connectors: outlets };
  return Object.entries(cables).reduce(
    (so, [id, [type]]) => so.lead(type, id).seat(id, `out-${id}`, '1', { plug: 'supply' }),
    bench().with({ units: [supply] }),
  );
}
