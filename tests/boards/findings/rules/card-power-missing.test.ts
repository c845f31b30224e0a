import { expect, test } from 'vitest';
import { bench } from '../harness';

const card = bench().unit('supply-fixed', 'psu').unit('card-two-sockets', 'card');

// ATX 3.0 power supply design guide (336521), Table 5-6: a card reads on its sense contacts what is plugged in.
test('a card of two sockets with one left: a fault that says how many are fed', () => {
  const one = card.seat('psu-card', 'card-power-1', '1', { plug: 'first' });
  expect(one.finding('card-power-missing')).toMatchObject({
    severity: 'fault',
    data: { connector: 'card-power-2', fed: 1, sockets: 2 },
  });
});

test('with none fed both sockets are told, and with both fed neither', () => {
  expect(card.all('card-power-missing').map(({ data }) => data.fed)).toEqual([0, 0]);
  const both = card
    .seat('psu-card', 'card-power-1', '1', { plug: 'first' })
    .seat('psu-card', 'card-power-2', '1', { plug: 'second' });
  expect(both.faults()).toEqual([]);
});

test('a card without a supply in the build misses nothing', () => {
  expect(bench().unit('card-two-sockets', 'card').codes()).toEqual([]);
});
