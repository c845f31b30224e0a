import { expect, test } from 'vitest';
import { bench } from '../harness';

const drive = bench().unit('supply-fixed', 'psu').unit('drive', 'disk');

// Serial ATA 1.0a: data and power are two connectors.
test('a drive with its data cable alone: a fault, and the SATA cable is the remedy', () => {
  const data = drive
    .header('sata-data-7', 'sata1')
    .lead('sata-data-cable', 'data')
    .seat('data', 'sata1', '1', { plug: 'board' })
    .seat('data', 'disk-data', '1', { plug: 'drive' });
  const finding = data.finding('drive-power-missing');
  expect(finding).toMatchObject({ severity: 'fault', data: { connector: 'disk-power', plugged: false } });
  expect(finding.remedies).toMatchObject([{ command: { name: 'seat-plug', args: { lead: 'psu-sata' } } }]);
});

test('with power it is nothing', () => {
  expect(drive.seat('psu-sata', 'disk-power', '1', { plug: 'first' }).faults()).toEqual([]);
});
