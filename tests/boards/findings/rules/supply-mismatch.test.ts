import { describe, expect, test } from 'vitest';
import { circuitOf } from '../../../../boards/circuit/circuit';
import { USUAL } from '../../../../boards/circuit/corner';
import { pinNode } from '../../../../boards/circuit/elements';
import { RESTING } from '../../../../boards/circuit/machine-state';
import { wordsOf } from '../../../../boards/findings/words';
import { bench } from '../harness';
import { pairs, supplies } from '../supplies';

describe('a modular cable on the supply that it came with', () => {
  test.each(pairs)('%s: every pin of every device gets its own rail', (own) => {
    const { faults, codes } = supplies({ cables: own, outlets: own });
    expect(codes).not.toContain('supply-mismatch');
    expect(faults).toEqual([]);
  });
});

describe('the same cables on the sockets of another supply', () => {
  const { bench } = supplies({ cables: 'ash', outlets: 'birch' });

  // Serial ATA 1.0a power segment, from a hardware handbook, Table 13-7: P7 to P9 +5 V, P13 to P15 +12 V.
  test('SATA: +12 V on the three contacts of +5 V, and +5 V on those of +12 V, from the pins of that outlet', () => {
    const finding = bench.find('supply-mismatch', 'disk-power');
    expect(finding.severity).toBe('danger');
    const arriving = finding.data.wrong.map(({ pin, signal, arrives, fed }) => [
      pin.pin,
      signal,
      Math.round(arrives?.usual ?? 0),
      fed,
    ]);
    expect(arriving).toEqual([
      ['7', 'supply-5v', 12, 'too-much'],
      ['8', 'supply-5v', 12, 'too-much'],
      ['9', 'supply-5v', 12, 'too-much'],
      ['13', 'supply-12v', 5, 'too-little'],
      ['14', 'supply-12v', 5, 'too-little'],
      ['15', 'supply-12v', 5, 'too-little'],
    ]);
    expect(finding.data.wrong[0]?.from).toEqual([{ connector: 'birch-drives-1', pin: '3' }]);
    expect(bench.words(finding)).toEqual({
      title: '+12 V would reach the +5 V pins of POWER of DISK and could destroy what is there.',
      reason:
        'Pins 7 to 9 (+5 V) would get +12 V, from pin 3 of DRIVES 1 of BIRCH. Pins 13 to 15 (+12 V) would get +5 V, from pin 1 of DRIVES 1 of BIRCH. The shape of the plugs does not tell: SATA cable of ASH (SATA 1) is wired for another outlet than it sits on.',
    });
  });

  // 12 V CPU connector with eight pins, from a pinout page: 1 to 4 ground, 5 to 8 +12 V.
  test('CPU: +12 V on every ground, which is a short through the board', () => {
    const { data, severity } = bench.find('supply-mismatch', 'cpu');
    expect(severity).toBe('danger');
    expect(data.wrong.map(({ pin, fed }) => [pin.pin, fed])).toEqual([
      ...['1', '2', '3', '4'].map((pin) => [pin, 'short']),
      ...['5', '6', '7', '8'].map((pin) => [pin, 'too-little']),
    ]);
    expect(data.arrives?.usual).toBeCloseTo(12, 1);
  });

  // ATX 3.0 power supply design guide (336521), Table 5-5: 1 to 3 +12 V, 4 Sense1, 5 ground, 6 Sense0, 7 and 8 ground.
  test('card: +12 V on grounds and on both sense contacts', () => {
    const { data } = bench.find('supply-mismatch', 'card-power');
    const shorted = data.wrong.filter(({ fed }) => fed === 'short').map(({ pin }) => pin.pin);
    expect(shorted).toEqual(['4', '5', '6', '7', '8']);
  });

  test('what to do is to take the cable off that supply', () => {
    const [remedy] = bench.find('supply-mismatch', 'disk-power').remedies;
    expect(remedy).toEqual({
      text: 'Take SATA cable of ASH off BIRCH, and use a cable that came with that supply.',
      command: { name: 'unseat-plug', args: { lead: 'ash-sata', plug: 'supply' } },
    });
  });

  test('main power is alike on both, and nothing is said of it', () => {
    expect(bench.about('main')).toEqual([]);
  });
});

test('nothing is told where nobody knows what the outlet carries', () => {
  const { codes } = supplies({ cables: 'ash', outlets: 'birch', untold: true });
  expect(codes).not.toContain('supply-mismatch');
  expect(codes).toContain('outlets-unknown');
});

describe('+5 V and +5 V standby in each other’s place: the volts are the same, the time is not', () => {
  // ATX12V: +5 V standby is there as soon as mains is, and is what a board starts from; +5 V comes once PS_ON# is low
  // (from memory). Pin 9 standby, pins 4 and 6 +5 V: microATX specification v1.2, Figure 8.
  const whole = bench()
    .unit('supply-modular-ash', 'ash')
    .header('main-power-24', 'main')
    .seat('ash-main', 'ash-main', '1', { plug: 'supply' })
    .seat('ash-main', 'main', '1', { plug: 'board' });
  const rewired = (outletOf: Readonly<Record<string, string>>) =>
    whole.with({
      extras: whole.build.extras.map((lead) => ({
        ...lead,
        wires: lead.wires.map((wire) => ({
          ...wire,
          ...(wire.from.startsWith('supply.') && { from: outletOf[wire.from] ?? wire.from }),
          ...(wire.to.startsWith('supply.') && { to: outletOf[wire.to] ?? wire.to }),
        })),
      })),
    });

  test('two wires exchanged at the supply: a fault at both pins', () => {
    const build = rewired({ 'supply.4': 'supply.9', 'supply.9': 'supply.4' });
    const finding = build.finding('supply-mismatch');
    expect(finding.severity).toBe('fault');
    expect(finding.data.wrong.map(({ pin, fed }) => [pin.pin, fed])).toEqual([
      ['4', 'only-standby'],
      ['9', 'only-running'],
    ]);
    // The circuit’s own volts before the button is pressed.
    const circuit = circuitOf(build.build);
    const resting = (pin: string) => circuit.volts(pinNode('main', pin), RESTING, USUAL) ?? 0;
    expect(resting('4')).toBeGreaterThan(4.5);
    expect(resting('9')).toBeLessThan(0.5);
    expect(wordsOf(finding, build.build)).toMatchObject({
      title: 'MAIN would not get the rails that it needs: +5\u00a0V standby in place of +5\u00a0V.',
    });
  });

  test('standby from a +5 V outlet: the machine has nothing to start from', () => {
    const build = rewired({ 'supply.9': 'supply.6' });
    expect(build.finding('supply-mismatch').data.wrong.map(({ pin, fed }) => [pin.pin, fed])).toEqual([
      ['9', 'only-running'],
    ]);
  });

  test('as it comes it is right', () => {
    expect(rewired({}).codes()).toEqual([]);
  });
});
