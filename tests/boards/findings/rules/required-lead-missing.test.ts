import { describe, expect, test } from 'vitest';
import { bench, switchOnSingles } from '../harness';

describe('no power switch on the board', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2.4: the power switch on pins 6 and 8.
  const board = bench().header('panel-2x5', 'panel');

  test('the lead lies beside the board: a fault, told instead of a lead left over', () => {
    const build = board.lead('power-switch-1x2', 'power');
    expect(build.codes()).toEqual(['required-lead-missing']);
    expect(build.finding('required-lead-missing')).toMatchObject({
      severity: 'fault',
      leads: ['power'],
      pins: [{ connector: 'panel', pin: '6' }],
      data: { plug: { lead: 'power', plug: 'plug' }, job: 'power-switch' },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'panel', at: [0, 2] } } }],
    });
  });

  // A switch closes nothing while one of its wires hangs in the air: common practice, no source.
  test('one of two single plugs on its pin, the other beside the board: the same fault', () => {
    const build = board
      .lead('power-led-singles', 'power', switchOnSingles('power-switch'))
      .seat('power', 'panel', '6', { plug: 'plus' });
    expect(build.finding('required-lead-missing')).toMatchObject({
      severity: 'fault',
      data: { plug: { lead: 'power', plug: 'minus' } },
    });
    expect(build.seat('power', 'panel', '8', { plug: 'minus' }).codes()).toEqual([]);
  });

  test('seated over the edge, with one wire on no pin, that is what is told', () => {
    const build = board.lead('power-switch-1x2', 'power').seat('power', 'panel', '9', { turn: 270 });
    expect(build.codes()).toContain('contact-off-pins');
    expect(build.codes()).not.toContain('required-lead-missing');
  });

  test('no lead has a power switch: a doubt', () => {
    expect(board.finding('required-lead-missing')).toMatchObject({ severity: 'doubt', leads: [] });
  });

  test('seated, or set aside on purpose, it is not missed', () => {
    expect(board.lead('power-switch-1x2', 'power').seat('power', 'panel', '6').codes()).toEqual([]);
    expect(board.lead('power-switch-1x2', 'power', { setAside: true }).codes()).toEqual([]);
  });
});
