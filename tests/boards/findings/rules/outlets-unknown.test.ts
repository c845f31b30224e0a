import { expect, test } from 'vitest';
import { blankOutlet, blankUnit } from '../../../../boards/library/blank-unit';
import { rowAfterRow } from '../../../../boards/library/grids';
import { bench } from '../harness';

const place = { xMm: 10, yMm: 10, turn: 0 } as const;
const outlet = blankOutlet(rowAfterRow(4), { id: 'out', print: 'OUT', place });
const supply = blankUnit('supply', { id: 'psu', name: 'PSU' });

// Common practice, no source: the supply's own end of a cable is each maker's own.
test('a supply of which no outlet is described is a doubt, and nothing is said to be missing', () => {
  const build = bench()
    .header('main-power-24', 'main')
    .header('cpu-power-2x4', 'cpu')
    .with({ units: [supply] });
  expect(build.codes()).toEqual(['outlets-unknown']);
});

test('a cable on an outlet with pins that nobody has written down: a doubt about the outlet, and no certainty', () => {
  const build = bench()
    .header('cpu-power-2x4', 'cpu')
    .lead('cpu-power-cable-8', 'cable')
    .with({ units: [{ ...supply, connectors: [outlet] }] })
    .seat('cable', 'out', '1', { plug: 'supply' })
    .seat('cable', 'cpu', '1', { plug: 'board' });
  expect(build.codes()).toEqual(['outlets-unknown']);
  expect(build.finding('outlets-unknown')).toMatchObject({
    severity: 'doubt',
    leads: ['cable'],
    data: { connectors: ['out'] },
  });
});

test('outlets with pins are none', () => {
  expect(bench().unit('supply-modular-ash', 'ash').codes()).toEqual([]);
});
