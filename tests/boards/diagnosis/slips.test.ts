import { expect, it } from 'vitest';
import { slipsOf } from '../../../boards/diagnosis/faults/slips';
import { makeConnector } from '../../../boards/library/make-connector';
import { bench } from '../findings/harness';

it('a slip on a header without a print is told by what the header is', () => {
  const place = { xMm: 20, yMm: 20, turn: 0 } as const;
  const fan = { ...makeConnector('fan-1x4', { id: 'header', print: '', place }), title: 'fan header' };
  const { build } = bench().connector(fan).lead('fan-1x4', 'rear').seat('rear', 'header', '1');
  const names = build.seats.flatMap((seat) => slipsOf(build, seat).map(({ name }) => name));
  const placed = names.filter((name) => name.includes(' on '));
  expect(placed.length).toBeGreaterThan(0);
  for (const name of placed) expect(name).toContain('on fan header');
});
