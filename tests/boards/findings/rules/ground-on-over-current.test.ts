import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a ground wire on an over-current input', () => {
  // Pin 10 as over-current input: an owners' thread with a case maker's reply; common practice, no source.
  const watched = { '10': { signal: 'usb-over-current' } } as const;

  test('a shield wire in hole 10 on a board that watches pin 10', () => {
    const build = bench()
      .header('usb2-2x5', 'usb', watched)
      .lead('usb2-block-2x5-shield', 'front')
      .seat('front', 'usb', '1');
    expect(build.faults()).toEqual(['ground-on-over-current']);
    expect(build.finding('ground-on-over-current')).toMatchObject({
      severity: 'fault',
      leads: ['front'],
      data: {
        part: 'first',
        meetings: [{ hole: '10', terminal: 'shield', pin: { connector: 'usb', pin: '10' } }],
      },
    });
  });

  test('a block without that wire is right on the same board', () => {
    const build = bench()
      .header('usb2-2x5', 'usb', watched)
      .lead('usb2-block-2x5', 'front')
      .seat('front', 'usb', '1');
    expect(build.faults()).toEqual([]);
  });
});
