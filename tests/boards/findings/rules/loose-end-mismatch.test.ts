import { expect, test } from 'vitest';
import { bench } from '../harness';
import { supplies } from '../supplies';

const ash = bench().unit('supply-modular-ash', 'ash');
const birch = bench().unit('supply-modular-birch', 'birch');
const mixed = birch
  .with({ extras: ash.build.extras })
  .seat('ash-sata', 'birch-drives-1', '1', { plug: 'supply' });

// Serial ATA 1.0a power segment, from a hardware handbook, Table 13-7: P7 to P9 +5 V, P13 to P15 +12 V.
test('a SATA cable on another supply, with no drive on it: a danger at each of its plugs', () => {
  const found = mixed.all('loose-end-mismatch');
  expect(found.map(({ severity, data }) => [severity, data.plug.plug])).toEqual([
    ['danger', 'first'],
    ['danger', 'second'],
  ]);
  expect(found[0]?.data.wrong.map(({ hole, fed }) => [hole, fed])).toEqual([
    ...['7', '8', '9'].map((hole) => [hole, 'too-much']),
    ...['13', '14', '15'].map((hole) => [hole, 'too-little']),
  ]);
  expect(found[0]?.data.arrives?.usual).toBeCloseTo(12, 1);
});

test('on its own supply it is nothing, nor while the cable hangs on none', () => {
  const own = birch.seat('birch-sata', 'birch-drives-1', '1', { plug: 'supply' });
  expect(own.codes()).not.toContain('loose-end-mismatch');
  expect(birch.codes()).not.toContain('loose-end-mismatch');
});

test('where the drive is there, the drive is told of, and the second plug of the same cable beside it', () => {
  const { bench: build } = supplies({ cables: 'ash', outlets: 'birch' });
  expect(build.find('supply-mismatch', 'disk-power').severity).toBe('danger');
});
