import { describe, expect, test } from 'vitest';
import type { Lead } from '../../../../boards/document/lead';
import { wordsOf } from '../../../../boards/findings/words';
import { bench } from '../harness';

const board = bench().header('main-power-24', 'main');
const fed = board.unit('supply-fixed', 'psu');

describe('the board’s main power', () => {
  test('without a supply in the build nothing is missing: nobody has spoken of one', () => {
    expect(board.codes()).toEqual([]);
    expect(
      board.lead('main-power-cable-24', 'cable').seat('cable', 'main', '1', { plug: 'board' }).codes(),
    ).toEqual([]);
  });

  test('without a plug nothing would start, and the cable of the supply is the remedy', () => {
    const finding = fed.finding('main-power-missing');
    expect(finding).toMatchObject({ severity: 'fault', data: { plugged: false } });
    expect(finding.remedies).toMatchObject([
      { command: { name: 'seat-plug', args: { lead: 'psu-main', plug: 'board', connector: 'main' } } },
    ]);
  });

  test('with the plug there it is nothing', () => {
    expect(fed.seat('psu-main', 'main', '1', { plug: 'board' }).faults()).toEqual([]);
  });

  test('a cable whose other end lies loose brings nothing', () => {
    const loose = bench()
      .unit('supply-modular-ash', 'ash')
      .header('main-power-24', 'main')
      .seat('ash-main', 'main', '1', { plug: 'board' });
    expect(loose.finding('main-power-missing')).toMatchObject({ severity: 'fault', data: { plugged: true } });
  });

  // microATX specification v1.2, Figure 8: a plug of 20 leaves pins 11, 12, 23 and 24 bare. That many boards
  // start so is common practice, no source.
  test('the four extra pins left off are a doubt', () => {
    const half = bench()
      .unit('supply-modular-ash', 'ash')
      .header('main-power-24', 'main')
      .lead('main-power-cable-20-and-4', 'old')
      .seat('old', 'ash-main', '1', { plug: 'supply' })
      .seat('old', 'main', '1', { plug: 'twenty' });
    expect(half.finding('main-power-missing')).toMatchObject({
      severity: 'doubt',
      data: { left: ['11', '12', '23', '24'] },
    });
    const four = {
      lead: 'old',
      plug: 'four',
      connector: 'main',
      at: [0, 10] as [number, number],
      turn: 0 as const,
    };
    const whole = half.with({ seats: [...half.build.seats, four] });
    expect(whole.codes()).not.toContain('main-power-missing');
  });

  // ATX12V: the supply holds PS_ON# high by itself, and is off as long as the board does not pull it low; the board
  // waits for PWR_OK (from memory). Pins 16 and 8: microATX specification v1.2, Figure 8.
  test.each([
    ['16', 'could not switch the supply on'],
    ['8', 'would not be told that its power is good'],
  ])('no wire in hole %s: a fault, though every rail arrives', (pin, says) => {
    const whole = bench()
      .unit('supply-modular-ash', 'ash')
      .header('main-power-24', 'main')
      .seat('ash-main', 'ash-main', '1', { plug: 'supply' })
      .seat('ash-main', 'main', '1', { plug: 'board' });
    expect(whole.codes()).toEqual([]);
    const without = ({ wires, ...lead }: Lead): Lead => ({
      ...lead,
      wires: wires.filter(({ from, to }) => ![from, to].includes(`board.${pin}`)),
    });
    const build = whole.with({ extras: whole.build.extras.map(without) });
    const finding = build.finding('main-power-missing');
    expect(finding).toMatchObject({ severity: 'fault', pins: [{ connector: 'main', pin }] });
    expect(wordsOf(finding, build.build).title).toContain(says);
  });
});
