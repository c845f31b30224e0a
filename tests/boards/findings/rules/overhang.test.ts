import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a plug that hangs over the edge', () => {
  // Common practice, no source: nothing is in the way of the empty hole, and no wire is missed.
  const fan = bench().header('fan-1x3', 'fan');

  test('a four-wide fan plug with its speed wire past a three-pin header: good to know', () => {
    const build = fan.lead('fan-1x4', 'cooler').seat('cooler', 'fan', '1');
    expect(build.finding('overhang')).toMatchObject({
      severity: 'note',
      leads: ['cooler'],
      data: { plug: { lead: 'cooler', plug: 'plug' }, connector: 'fan', holes: ['4'] },
      remedies: [],
    });
  });

  test('a three-wide plug on it hangs over nothing', () => {
    expect(fan.lead('fan-1x3', 'cooler').seat('cooler', 'fan', '1').codes()).not.toContain('overhang');
  });
});
