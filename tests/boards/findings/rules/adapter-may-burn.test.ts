import { expect, test } from 'vitest';
import { bench } from '../harness';

// Common practice, no source: adapters moulded in one piece have burnt.
test('a SATA plug that hangs on a four-pin plug is a doubt, seated or fed or not', () => {
  const disk = bench().unit('drive', 'disk');
  const unit = disk
    .unit('sata-adapter', 'adapter')
    .seat('adapter-tail', 'disk-power', '1', { plug: 'drive' });
  expect(unit.finding('adapter-may-burn').severity).toBe('doubt');
  const lead = disk
    .lead('sata-power-adapter', 'adapter')
    .seat('adapter', 'disk-power', '1', { plug: 'drive' });
  expect(lead.finding('adapter-may-burn').leads).toEqual(['adapter']);
});

test('a SATA plug of the supply itself is none', () => {
  const own = bench()
    .unit('supply-fixed', 'psu')
    .unit('drive', 'disk')
    .seat('psu-sata', 'disk-power', '1', { plug: 'first' });
  expect(own.codes()).not.toContain('adapter-may-burn');
});
