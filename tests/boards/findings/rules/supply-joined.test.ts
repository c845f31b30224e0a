import { describe, expect, test } from 'vitest';
import { wordsOf } from '../../../../boards/findings/words';
import { singleRow } from '../../../../boards/library/grids';
import { plug } from '../../../../boards/library/plug-and-wires';
import { type Bench, bench, switchOnSingles } from '../harness';

describe('a switch or a speaker between a supply and something else', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.1: +5 V at the panel header is not protected.
  // +5 V on pin 9: older board manuals (from memory).
  const board = bench().header('panel-2x5-supply', 'panel');

  test('a reset switch from +5 V on pin 9 to the reset input: a press would put +5 V on it', () => {
    const build = board.lead('reset-switch-1x2', 'reset').seat('reset', 'panel', '7');
    expect(build.finding('supply-joined')).toMatchObject({
      severity: 'danger',
      leads: ['reset'],
      pins: [
        { connector: 'panel', pin: '7' },
        { connector: 'panel', pin: '9' },
      ],
      data: { part: 'switch', volts: 5, other: 'reset-switch-input' },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'panel', at: [1, 2] } } }],
    });
  });

  test('a speaker from +5 V to ground is a short', () => {
    const row = board.header('speaker-1x4', 'spk', { '4': { signal: 'ground' } });
    const build = row.lead('speaker-1x4', 'beeper').seat('beeper', 'spk', '1');
    expect(build.finding('supply-joined').data).toMatchObject({ volts: 5, other: 'ground' });
  });

  test('a switch between its input and ground, and a speaker on its own pins, are right', () => {
    const build = board
      .header('speaker-1x4', 'spk')
      .lead('reset-switch-1x2', 'reset')
      .seat('reset', 'panel', '5')
      .lead('speaker-1x4', 'beeper')
      .seat('beeper', 'spk', '1');
    expect(build.faults()).toEqual([]);
  });

  // The same guide; the second plug is the first one's twin, for boards with another order.
  const twin = board.header('usb2-2x5', 'usb').lead('reset-switch-1x2', 'reset', {
    plugs: [plug('two', '2', singleRow(2)), plug('four', '4', singleRow(4))],
    wires: [
      { from: 'switch.a', to: 'two.1', colour: 'blue' },
      { from: 'switch.b', to: 'two.2', colour: 'white' },
      { from: 'switch.a', to: 'four.1', colour: 'blue' },
      { from: 'switch.b', to: 'four.4', colour: 'white' },
    ],
  });
  const onItsPins = (made: Bench) => made.seat('reset', 'panel', '5', { plug: 'two' });
  const onSupply = (made: Bench) => made.seat('reset', 'usb', '1', { plug: 'four' });

  test.each([
    ['first', onSupply(onItsPins(twin))],
    ['last', onItsPins(onSupply(twin))],
  ])('a switch with two plugs, the right one seated %s, and the other from +5 V to ground', (_, build) => {
    expect(build.finding('supply-joined')).toMatchObject({
      severity: 'danger',
      data: { volts: 5, other: 'ground' },
    });
    expect(build.codes('reset')).not.toContain('pair-split');
  });

  // A lid that is off closes its switch, and no state of the machine does: taken as closed, it shorts the port until
  // its fuse opens. Common practice, no source.
  test('the switch of the lid from +5 V to ground: told as a switch that stays closed, with what would flow then', () => {
    const build = board
      .header('panel-2x5', 'other')
      .lead('power-led-singles', 'lid', switchOnSingles('case-open-switch'))
      .seat('lid', 'panel', '9', { plug: 'plus' })
      .seat('lid', 'other', '8', { plug: 'minus' });
    const finding = build.finding('supply-joined');
    // 5 V over a contact and two wires of at most about an ohm together (Ohm’s law).
    expect(finding.data.amps).toBeGreaterThan(5);
    expect(finding.data.watts).toBeGreaterThan(0.1);
    expect(wordsOf(finding, build.build).title.replaceAll('\u00a0', ' ')).toBe(
      'The case-open switch would short +5 V to ground while it is closed.',
    );
  });
});
