import { describe, expect, test } from 'vitest';
import { applyCommand } from '../../../boards/edit/apply';
import type { Remedy } from '../../../boards/findings/finding';
import { findingsOf } from '../../../boards/findings/findings';
import { wordsOf } from '../../../boards/findings/words';
import { Bench, bench, switchOnSingles } from './harness';

/** What every remedy of every finding about the lead says. */
function remedies({ build }: Bench): readonly Remedy[] {
  return findingsOf(build).flatMap((finding) => (finding.leads.includes('power') ? finding.remedies : []));
}

function texts(made: Bench): readonly string[] {
  return remedies(made).map(({ text }) => text.replaceAll('\u00a0', ' '));
}

/** The build with the first remedy carried out. */
function pressed(made: Bench): Bench {
  const [command] = remedies(made).flatMap((remedy) => remedy.command ?? []);
  const done = command && applyCommand(made.build, command);
  if (!done?.ok) throw new Error('Nothing to press');
  return new Bench(done.value);
}

const SWITCH = switchOnSingles('power-switch');

// Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2: power LED + on 2, − on 4, switched there; the power
// switch from 6 to ground. USB 2.0 2x5 header as listed in board product guides: ground on 7 and 8.
describe('a power LED on two single plugs, its − on a ground of another header', () => {
  const apart = bench()
    .header('panel-2x5', 'panel')
    .header('usb2-2x5', 'usb')
    .lead('power-led-singles', 'power')
    .seat('power', 'panel', '2', { plug: 'plus' })
    .seat('power', 'usb', '7', { plug: 'minus' });

  test('it is sent to the pin that the board switches, by one press, and the + is left where it is right', () => {
    expect(texts(apart)).toEqual(['Move POWER (P LED−) to pin 4 of PANEL.']);
    expect(pressed(apart).codes('power')).toEqual([]);
  });

  test('it is not said to show nothing: it is lit while the machine is on', () => {
    const finding = apart.finding('led-always-lit');
    expect(wordsOf(finding, apart.build).title).toBe(
      'The power LED would be lit, but not as the board switches it.',
    );
  });

  test('where that pin is taken by what is wrong there, that comes off first; no press leads in a ring', () => {
    const taken = apart
      .lead('power-led-singles', 'other', { parts: [{ id: 'led', kind: 'drive-led' }] })
      .seat('other', 'panel', '4', { plug: 'plus' });
    expect(texts(taken)).toEqual(['Take OTHER (P LED+) off first: it sits where POWER (P LED−) belongs.']);
    expect(texts(pressed(taken))).toEqual(['Move POWER (P LED−) to pin 4 of PANEL.']);
  });

  test('where it is taken by what belongs there, nothing is proposed that is no better', () => {
    const both = apart.lead('power-led-singles', 'other').seat('other', 'panel', '4', { plug: 'minus' });
    expect(texts(both)).toEqual([]);
  });
});

describe('one of two single plugs beside the board', () => {
  // +5 V on pin 9: older board manuals (from memory). An LED from there to its own − has no resistor.
  const onSupply = bench()
    .header('panel-2x5-supply', 'panel')
    .lead('power-led-singles', 'power')
    .seat('power', 'panel', '9', { plug: 'plus' });

  test('with the other one on +5 V it is not sent to its place, where the LED could burn out', () => {
    expect(onSupply.codes('power')).not.toContain('lead-left-over');
    expect(texts(onSupply)).toEqual(['Move POWER (P LED+) to pin 2 of PANEL.']);
    const mended = pressed(onSupply);
    expect(texts(mended)).toEqual(['Seat POWER (P LED−) on pin 4 of PANEL.']);
    expect(pressed(mended).codes('power')).toEqual([]);
  });

  test('a power switch with the other one on +5 V: neither, though the machine lacks it', () => {
    const build = bench()
      .header('panel-2x5-supply', 'panel')
      .lead('power-led-singles', 'power', SWITCH)
      .seat('power', 'panel', '9', { plug: 'plus' });
    expect(build.faults()).toContain('required-lead-missing');
    expect(
      remedies(build).flatMap(({ command }) => (command?.name === 'seat-plug' ? command.args.plug : [])),
    ).toEqual(['plus']);
  });

  test('on a board without LED pins its ground is no place for it: there is none for the LED', () => {
    const build = bench().header('fan-1x4', 'fan').lead('power-led-singles', 'power');
    expect(build.codes('power')).toEqual(['no-place']);
  });
});

describe('what lies where it could be right', () => {
  test('a switch with both of its single plugs on grounds: one of them goes to the input', () => {
    const build = bench()
      .header('panel-2x5', 'panel', { '3': { signal: 'ground' } })
      .lead('power-led-singles', 'power', SWITCH)
      .seat('power', 'panel', '8', { plug: 'plus' })
      .seat('power', 'panel', '3', { plug: 'minus' });
    expect(texts(build)).toContain('Move POWER (P LED+) to pin 6 of PANEL.');
    expect(pressed(build).faults()).toEqual([]);
  });

  test('an LED that is dim on its own pins is not told to come off for want of a place', () => {
    const build = bench()
      .header('panel-2x5', 'panel', { '2': { values: [{ parameter: 'led-feed-ohms', value: 10_000 }] } })
      .lead('power-led-1x2', 'power')
      .seat('power', 'panel', '2');
    expect(build.codes('power')).toEqual(['led-depends']);
    expect(texts(build)).toEqual([]);
  });
});
