import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { Build, Seat } from '../../boards/document/build';
import { serialize } from '../../boards/document/serialize';
import { makeConnector } from '../../boards/library/make-connector';
import { makeLead } from '../../boards/library/make-lead';
import { makeUnit } from '../../boards/library/make-unit';
import { buildIn } from './bench-work';
import { findingsIn, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

const FANS = ['intake-1', 'intake-2', 'intake-3'];

/** Three strong fans on a hub that draws from one header for 1 A, and beside it a hub fed from the supply, unused. */
function hubs(): Build {
  const plain: Build = {
    format: 'leadwright/build',
    version: 1,
    id: 'fans',
    name: 'Fans',
    board: {
      format: 'leadwright/board',
      version: 1,
      id: 'board',
      name: 'Board',
      outline: { widthMm: 200, depthMm: 150 },
      connectors: [],
    },
    case: {
      format: 'leadwright/case',
      version: 1,
      id: 'case',
      name: 'Case',
      leads: [],
      tray: { widthMm: 400, heightMm: 400, points: [], openings: [], bays: [], paths: [] },
    },
    extras: [],
    seats: [],
    view: { turn: 0, mirrored: false },
  };
  const header = (id: string, yMm: number) => ({
    ...makeConnector('fan-1x4', { id, print: id.toUpperCase(), place: { xMm: 30, yMm, turn: 0 as const } }),
    rating: { amps: 1 },
  });
  const small = makeUnit('fan-hub-header', { id: 'small', name: 'Small hub' });
  const large = makeUnit('fan-hub-supply', { id: 'large', name: 'Large hub' });
  const fans = FANS.map((id) => {
    const lead = makeLead('fan-1x4', { id, name: id });
    const fan = { runningAmps: 0.4, startAmps: 0.5, cools: 'case' as const };
    return { ...lead, parts: lead.parts.map((part) => ({ ...part, fan })) };
  });
  const on = (lead: string, plug: string, connector: string): Seat => ({
    lead,
    plug,
    connector,
    at: [0, 0],
    turn: 0,
  });
  const ratedHub = (unit: typeof small.unit, fedBy: 'header' | 'supply') => ({
    ...unit,
    hub: { fedBy, amps: 4 },
  });
  return {
    ...plain,
    board: { ...plain.board, connectors: [header('fan-a', 20), header('fan-b', 60)] },
    extras: [...fans, ...small.leads, ...large.leads],
    units: [ratedHub(small.unit, 'header'), ratedHub(large.unit, 'supply')],
    seats: [
      ...small.seats,
      ...large.seats,
      on('small-tail', 'header', 'fan-a'),
      on('large-tail', 'header', 'fan-b'),
      ...FANS.map((id, at) => on(id, 'plug', `small-fan-${at + 1}`)),
    ],
  };
}

it('a hub that overloads its header is found, and its fans are moved to one fed from the supply', async () => {
  const file = join(workplace.home, 'fans.build.json');
  writeFileSync(file, serialize(hubs()));
  const page = await workplace.open([file]);
  await page.getByRole('grid', { name: 'Leads' }).waitFor();
  const overload = 'The fans on FAN-A through Small hub take 1.2 A while they run, and it may carry 1 A.';
  await expect.poll(async () => (await findingsIn(page)).map(({ title }) => title)).toContain(overload);

  await page.getByRole('button', { name: 'Route' }).click();
  await page.getByText('Fans and drives', { exact: false }).first().click();
  await page.getByText('intake-1 goes on outlet', { exact: false }).waitFor();
  await page.getByRole('button', { name: /^Move \d plugs? there$/ }).click();
  await page.getByRole('button', { name: 'All plugs are where they go' }).waitFor();

  await page.getByRole('button', { name: 'Wire' }).click();
  await expect.poll(async () => (await findingsIn(page)).map(({ title }) => title)).not.toContain(overload);
  await page.keyboard.press('Control+s');
  await expect.poll(() => stateOf(page)).toBe('saved in fans.build.json');
  // Two of the three start on 1 A; what is too much goes to the hub that has its own lead to the supply.
  const saved = buildIn(file).seats.filter(({ lead }) => FANS.includes(lead));
  expect(saved.filter(({ connector }) => connector.startsWith('small-fan-'))).toHaveLength(2);
  expect(saved.filter(({ connector }) => connector.startsWith('large-fan-'))).toHaveLength(1);
  await page.keyboard.press('Control+z');
  await expect.poll(async () => (await findingsIn(page)).map(({ title }) => title)).toContain(overload);
});

it('where a fan goes is chosen by keyboard, and what comes of it is said', async () => {
  const file = join(workplace.home, 'fans.build.json');
  writeFileSync(file, serialize(hubs()));
  const page = await workplace.open([file]);
  await page.getByRole('grid', { name: 'Leads' }).waitFor();
  await page.keyboard.press('Control+3');
  const fold = page.locator('summary', { hasText: 'Fans and drives' });
  await fold.focus();
  await page.keyboard.press('Enter');
  const choice = page.getByRole('button', { name: 'Where intake-1 goes' });
  await choice.focus();
  await page.keyboard.press('ArrowDown');
  await page.getByRole('option', { name: 'Small hub on FAN-A' }).waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.getByText('intake-1 goes on outlet 1 of Small hub on FAN-A', { exact: false }).waitFor();
});
