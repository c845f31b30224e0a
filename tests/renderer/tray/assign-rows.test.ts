import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { makeConnector } from '../../../boards/library/make-connector';
import { assignmentsOf } from '../../../boards/routing/assign/assignments';
import { movesTo } from '../../../boards/routing/assign/moves';
import { assignGroups } from '../../../renderer/areas/route/assign/assign-rows';
import { bench } from '../../boards/findings/harness';
import { withFans } from '../../boards/routing/assign/with-fans';

describe('a hub that has the supply and no header', () => {
  const fed = bench()
    .connector({
      ...makeConnector('fan-1x4', { id: 'sys', print: 'SYS', place: { xMm: 20, yMm: 20, turn: 0 } }),
      rating: { amps: 1 },
    })
    .unit('fan-hub-supply', 'hub', { hub: { fedBy: 'supply', amps: 4 } })
    .lead('sata-power-cable', 'sata')
    .seat('sata', 'hub-power', '1', { plug: 'first' });

  it('is a place for fans, at full speed and unheard, and is called by its own name', () => {
    const [group] = assignGroups(withFans(fed, { a: 'hub-fan-3', b: 'hub-fan-4', c: 'sys' }));
    expect(group?.rows.map(({ name, now }) => [name, now])).toEqual([
      ['A', '3 of HUB'],
      ['B', '4 of HUB'],
      ['C', 'SYS'],
    ]);
    expect(group?.rows[0]?.options.map(({ label }) => label)).toEqual(['SYS', 'HUB']);
    expect(group?.loads).toEqual([
      'SYS carries 0.30\u00a0A while its fans run and 0.50\u00a0A when all start at once, of 1.00\u00a0A.',
      'HUB, fed from the supply unit, carries 0.60\u00a0A while its fans run and 1.00\u00a0A when all start at once, of 4.00\u00a0A.',
    ]);
    expect(group?.rows.filter(({ words }) => words.includes('always runs at full speed'))).toHaveLength(2);
  });

  it('keeps the fan that a person has chosen it for, by whichever outlet', () => {
    const build = withFans(fed, { a: undefined });
    const chosen: Build = { ...build, choices: [{ kind: 'header', of: 'a', on: 'hub-fan-5' }] };
    expect(assignmentsOf(chosen).fans.fans.map(({ header }) => header)).toEqual(['hub-fan-1']);
  });
});

describe('a hub whose third outlet hands its speed to the watched header', () => {
  const header = makeConnector('fan-1x4', { id: 'cpu', print: 'CPU', place: { xMm: 20, yMm: 20, turn: 0 } });
  const hub = bench()
    .connector({ ...header, rating: { amps: 1, watched: true } })
    .unit('fan-hub-supply', 'hub', { hub: { fedBy: 'supply', amps: 4, speedOutlet: 'hub-fan-3' } })
    .seat('hub-tail', 'cpu', '1', { plug: 'header' });

  /** What is said of each fan, and the connector that its plug is moved to. */
  function toldAndDone(build: Build): readonly (readonly [string | undefined, string | undefined])[] {
    const [group] = assignGroups(build);
    const { seats } = movesTo(build, assignmentsOf(build));
    return (group?.rows ?? []).map(({ id, words }) => [
      words.split(':')[0],
      seats.find(({ lead }) => lead === id)?.connector,
    ]);
  }

  function cooled(on: Readonly<Record<string, string | undefined>>): Build {
    const build = withFans(hub, on);
    const leads = build.case.leads.map((lead) =>
      lead.id === 'cooler'
        ? {
            ...lead,
            parts: lead.parts.map((part) => ({
              ...part,
              fan: { runningAmps: 0.2, startAmps: 0.4, cools: 'processor' as const },
            })),
          }
        : lead,
    );
    return { ...build, case: { ...build.case, leads } };
  }

  it('has the outlets told by their print, the processor’s fan on the one that is heard', () => {
    expect(toldAndDone(cooled({ case: undefined, cooler: undefined }))).toEqual([
      ['CASE goes on outlet\u00a01 of HUB on CPU', 'hub-fan-1'],
      ['COOLER goes on outlet\u00a03 of HUB on CPU', 'hub-fan-3'],
    ]);
  });

  it('leaves fans on the outlets that they have, and says so', () => {
    expect(toldAndDone(cooled({ case: 'hub-fan-5', cooler: 'hub-fan-3' }))).toEqual([
      ['CASE goes on outlet\u00a05 of HUB on CPU', undefined],
      ['COOLER goes on outlet\u00a03 of HUB on CPU', undefined],
    ]);
  });
});
