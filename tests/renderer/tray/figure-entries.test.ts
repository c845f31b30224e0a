import { expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { makeConnector } from '../../../boards/library/make-connector';
import { makeLead } from '../../../boards/library/make-lead';
import { makeUnit } from '../../../boards/library/make-unit';
import { assignmentsOf } from '../../../boards/routing/assign/assignments';
import { figureEntries } from '../../../renderer/areas/route/assign/figure-entries';
import { bench } from '../../boards/fixtures/bench';

const hub = makeUnit('fan-hub-header', { id: 'hub', name: 'Hub' });
const cooler = makeLead('fan-1x4', { id: 'cooler', name: 'Processor cooler' });
const header = makeConnector('fan-1x4', { id: 'fan', print: 'FAN', place: { xMm: 30, yMm: 20, turn: 0 } });

const build: Build = {
  ...bench([header], [cooler, ...hub.leads], [...hub.seats]),
  units: [hub.unit],
};

function subject(name: string) {
  return figureEntries(build).find((each) => each.name === name)?.subject;
}

it('One figure of a fan leaves the rest as it is taken without a label: a cooler stays the processor’s', () => {
  const found = subject('Processor cooler');
  expect(found).toMatchObject({ kind: 'fan', fan: undefined, usual: { cools: 'processor' } });
  const taken = assignmentsOf(build).ofFans.fans.find(({ id }) => id === 'cooler');
  if (found?.kind !== 'fan') throw new Error('The cooler is told of as a fan');
  const { cools, runningAmps, startAmps } = found.usual;
  expect(taken).toMatchObject({ cools, runningA: runningAmps, startA: startAmps });
});

it('A hub reports the speed of a fan on an outlet, never of its own way in', () => {
  const joined: Build = {
    ...build,
    seats: [...hub.seats, { lead: 'hub-tail', plug: 'header', connector: 'fan', at: [0, 0], turn: 0 }],
  };
  const found = figureEntries(joined).find(({ name }) => name === 'Hub')?.subject;
  if (found?.kind !== 'hub') throw new Error('The hub is told of as a hub');
  const used = assignmentsOf(joined).ofFans.hung.find(({ unit }) => unit.id === 'hub');
  expect(found.usual).toEqual(used?.rating);
  expect(new Set(found.outlets)).toEqual(new Set(used?.outlets));
  expect(hub.unit.connectors.length).toBeGreaterThan(found.outlets.length);
});
