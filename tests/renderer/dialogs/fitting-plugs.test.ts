import { expect, test } from 'vitest';
import { anyConnectorOf } from '../../../boards/document/lookup';
import { fittingPlugs } from '../../../renderer/dialogs/unit/fitting-plugs';
import { bench } from '../../boards/findings/harness';

function fitting({ build }: { readonly build: Parameters<typeof fittingPlugs>[0] }, id: string) {
  const connector = anyConnectorOf(build, id);
  if (!connector) throw new Error(`No ${id}`);
  return fittingPlugs(build, connector);
}

test('an outlet takes every cable of its shape, also those of another supply: loose ones first', () => {
  const both = bench()
    .unit('supply-modular-ash', 'ash')
    .unit('supply-modular-birch', 'birch')
    .seat('ash-sata', 'ash-drives-2', '1', { plug: 'supply' });
  const found = fitting(both, 'birch-drives-1').map(({ ref, elsewhere }) => [ref.lead, elsewhere]);
  expect(found).toEqual([
    ['ash-drive', false],
    ['birch-sata', false],
    ['birch-drive', false],
    ['ash-sata', true],
  ]);
});

test('every plug is offered the right way round: its rib on the guide', () => {
  const psu = bench().unit('supply-fixed', 'psu').unit('drive', 'disk');
  expect(fitting(psu, 'disk-power').map(({ seat }) => seat.turn)).toEqual([0, 0]);
});

test('a fan is made for the outlet of a hub, and comes before cables and what only fits there', () => {
  const hub = bench().unit('fan-hub-header', 'hub').lead('power-switch-1x2', 'power').lead('fan-1x4', 'rear');
  const found = fitting(hub, 'hub-fan-1');
  expect(found.map(({ ref }) => ref.lead)).toEqual(['rear', 'hub-tail', 'power']);
  expect(found[0]).toMatchObject({ seat: { at: [0, 0], turn: 0 } });
});
