import { expect, test } from 'vitest';
import { contextOf } from '../../../boards/findings/context';
import { circuitWhenClosed } from '../../../boards/findings/when-closed';
import { bench } from './harness';

const { build } = bench()
  .header('panel-2x5', 'panel')
  .lead('case-open-1x2', 'lid')
  .seat('lid', 'panel', '6')
  .lead('power-switch-1x2', 'power')
  .seat('power', 'panel', '5');

function circuits(kind: string) {
  const context = contextOf(build);
  const part = context.parts.find((each) => each.part.kind === kind);
  if (part === undefined) throw new Error(`Nothing seated is a ${kind}`);
  return { now: context.circuit, closed: circuitWhenClosed(context, part) };
}

test('the switch of a lid is taken as closed in a circuit that several rules share', () => {
  const { now, closed } = circuits('case-open-switch');
  expect(closed).not.toBe(now);
  expect(circuits('case-open-switch').closed).toBe(closed);
});

test('a button opens again, so the circuit is the one that there is', () => {
  const { now, closed } = circuits('power-switch');
  expect(closed).toBe(now);
});
