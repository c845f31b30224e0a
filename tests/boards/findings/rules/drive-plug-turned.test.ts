import { expect, test } from 'vitest';
import { bench } from '../harness';

const disk = bench().unit('supply-fixed', 'psu').unit('drive-peripheral', 'disk');

// Order of the four pins from memory: +12 V, ground, ground, +5 V.
test('a four-pin plug pressed in the other way round brings +12 V to +5 V: a danger', () => {
  const turned = disk.seat('psu-drive', 'disk-power', '4', { plug: 'drive', turn: 180 });
  expect(turned.finding('drive-plug-turned')).toMatchObject({
    severity: 'danger',
    leads: ['psu-drive'],
    data: { connector: 'disk-power' },
  });
  expect(turned.faults()).toEqual(['drive-plug-turned']);
});

test('the right way round it is nothing', () => {
  expect(disk.seat('psu-drive', 'disk-power', '1', { plug: 'drive' }).faults()).toEqual([]);
});
