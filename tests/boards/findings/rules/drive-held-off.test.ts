import { expect, test } from 'vitest';
import { bench } from '../harness';

const psu = bench().unit('supply-fixed', 'psu');

// Serial ATA 3.3, from an encyclopaedia: pin 3 of newer drives keeps them off while +3.3 V is on it.
test('a drive with power disable on a supply that feeds +3.3 V there: a fault', () => {
  const held = psu.unit('drive-power-disable', 'disk').seat('psu-sata', 'disk-power', '1', { plug: 'first' });
  expect(held.finding('drive-held-off')).toMatchObject({ severity: 'fault', data: { certain: true } });
  expect(held.finding('drive-held-off').data.arrives.usual).toBeCloseTo(3.3, 1);
  expect(held.faults()).toEqual(['drive-held-off']);
});

test('on a drive that may be of either kind it is a note, and without that wire nothing', () => {
  const perhaps = psu.unit('drive', 'disk').seat('psu-sata', 'disk-power', '1', { plug: 'first' });
  expect(perhaps.finding('drive-held-off').severity).toBe('note');
  const adapter = psu
    .unit('drive-power-disable', 'disk')
    .unit('sata-adapter', 'adapter')
    .seat('psu-drive', 'adapter-in', '1', { plug: 'drive' })
    .seat('adapter-tail', 'disk-power', '1', { plug: 'drive' });
  expect(adapter.faults()).toEqual([]);
});
