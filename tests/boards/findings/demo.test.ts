import { describe, expect, test } from 'vitest';
import { findingsOf } from '../../../boards/findings/findings';
import { demo } from './demo';

describe('the demo', () => {
  test('wired right: no danger, no fault', () => {
    const found = findingsOf(demo('wired'));
    expect(found.filter(({ severity }) => severity === 'danger' || severity === 'fault')).toEqual([]);
  });

  test('wired in eight wrong ways: each is found', () => {
    const found = findingsOf(demo('eight-slips')).map(({ severity, code, leads }) =>
      [severity, code, ...leads].join(' '),
    );
    expect(found).toEqual(
      expect.arrayContaining([
        'danger usb-on-1394 front-usb',
        'danger ieee1394-on-usb front-1394',
        'danger supply-reversed card-reader',
        'danger fan-supply-on-signal cpu-fan',
        'fault switches-exchanged power-switch reset-switch',
        'fault shifted drive-led',
        'fault reversed power-led',
        'fault on-clear-settings case-open',
        'fault input-held clear-cap',
        'doubt lead-left-over front-audio',
      ]),
    );
  });
});
