import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a lead whose place another one has', () => {
  // Common practice, no source: one header takes one lead.
  const board = bench()
    .header('usb2-2x5', 'usb')
    .lead('usb2-block-2x5', 'front')
    .lead('usb2-block-2x5', 'side');

  test('two USB leads and one header', () => {
    const build = board.seat('front', 'usb', '1');
    expect(build.codes()).toEqual(['place-taken']);
    expect(build.finding('place-taken')).toMatchObject({
      severity: 'doubt',
      leads: ['side'],
      data: { plug: { lead: 'side', plug: 'plug' }, by: [{ lead: 'front', plug: 'plug' }] },
      remedies: [{ command: { name: 'set-lead-aside', args: { lead: 'side', aside: true } } }],
    });
  });

  test('with a second header there is a place', () => {
    const build = board.header('usb2-2x5', 'usb-2').seat('front', 'usb', '1').seat('side', 'usb-2', '1');
    expect(build.codes()).toEqual([]);
  });
});
