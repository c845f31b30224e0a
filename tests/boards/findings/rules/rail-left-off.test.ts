import { expect, test } from 'vitest';
import type { Lead } from '../../../../boards/document/lead';
import { bench } from '../harness';

const plugged = bench()
  .unit('supply-fixed', 'psu')
  .unit('drive', 'disk')
  .unit('sata-adapter', 'adapter')
  .seat('psu-drive', 'adapter-in', '1', { plug: 'drive' })
  .seat('adapter-tail', 'disk-power', '1', { plug: 'drive' });

// Serial ATA 1.0a power segment, from a hardware handbook, Table 13-7: P1 to P3 are +3.3 V, which a four-pin plug has not.
test('+3.3 V left off by an adapter is a note', () => {
  expect(plugged.finding('rail-left-off')).toMatchObject({
    severity: 'note',
    pins: ['1', '2', '3'].map((pin) => ({ connector: 'disk-power', pin })),
    data: { signal: 'supply-3v3' },
  });
  expect(plugged.faults()).toEqual([]);
});

test('without the +12 V wires it is a fault', () => {
  const cut = ({ wires, ...lead }: Lead): Lead => ({
    ...lead,
    wires: wires.filter(({ from }) => from !== 'inside.1'),
  });
  const extras = plugged.build.extras.map((lead) => (lead.id === 'adapter-tail' ? cut(lead) : lead));
  expect(
    plugged
      .with({ extras })
      .all('rail-left-off')
      .map(({ severity, data }) => [severity, data.signal]),
  ).toEqual([
    ['fault', 'supply-12v'],
    ['note', 'supply-3v3'],
  ]);
});
