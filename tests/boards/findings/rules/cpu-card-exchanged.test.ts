import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

// A textbook, read in secondary: the rows are opposite, and a forced crossing shorts +12 V to ground.
describe('a CPU plug and a card plug in each other’s place', () => {
  const board = bench().header('cpu-power-2x4', 'cpu').unit('card-one-socket', 'card');
  const cpu = board.lead('cpu-power-cable-8', 'cable');
  const card = board.lead('card-power-cable-8', 'cable');

  test('a card plug forced on the CPU’s socket is a danger, also where no supply is in the build', () => {
    const finding = card.seat('cable', 'cpu', '1', { plug: 'board' }).finding('cpu-card-exchanged');
    expect(finding).toMatchObject({ severity: 'danger', data: { made: 'card-power', met: 'cpu-power' } });
  });

  test('a CPU plug forced on a card’s socket as well', () => {
    const forced = cpu.seat('cable', 'card-power', '1', { plug: 'board' });
    expect(forced.codes()).toEqual(['cpu-card-exchanged']);
  });

  test('each on its own is nothing', () => {
    expect(cpu.seat('cable', 'cpu', '1', { plug: 'board' }).codes()).toEqual([]);
    expect(card.seat('cable', 'card-power', '1', { plug: 'board' }).codes()).toEqual([]);
  });

  test('geometry refuses both: a file may still hold them', () => {
    const { refusals } = card.seat('cable', 'cpu', '1', { plug: 'board' }).fit('cable', 'board');
    expect(refusals).toMatchObject([{ code: 'family' }]);
  });
});
