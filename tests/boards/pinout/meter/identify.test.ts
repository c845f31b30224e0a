import { describe, expect, it } from 'vitest';
import type { Connector } from '../../../../boards/document/connector';
import type { PinReading } from '../../../../boards/document/pin-reading';
import type { Identification } from '../../../../boards/pinout/meter/identification';
import { identifyPins } from '../../../../boards/pinout/meter/identify';
import { grid, posts } from '../../fixtures/bench';

/** The published panel header as a person meets it: ten places counted odd and even, none at 10. */
const PANEL: Connector = {
  ...posts('panel', grid(2, 5, { numbering: { scheme: 'zig-zag', from: 'bottom-left' } })),
  pins: [{ pin: '10', missing: true }],
};

function saidOf(connector: Connector, ...readings: readonly PinReading[]): Identification {
  const result = identifyPins({ ...connector, readings: [...readings] });
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
}

const ohms = (pin: string, shown: number | 'open'): PinReading => ({ kind: 'ohms', pin, ohms: shown });
const volts = (pin: string, supply: 'standby' | 'running', shown: number): PinReading => ({
  kind: 'volts',
  pin,
  supply,
  volts: shown,
});

describe('a header that nothing was measured on', () => {
  it('proposes a reading that needs no power, and holds nothing for certain', () => {
    const found = saidOf(PANEL);
    expect(found.verdict).toBe('no-readings');
    expect(found.pins.map(({ pin }) => pin)).toEqual(['1', '2', '3', '4', '5', '6', '7', '8', '9']);
    expect(found.pins.filter(({ certain }) => certain)).toEqual([]);
    expect(found.next?.question.kind).toBe('ohms');
    for (const { chances } of found.pins)
      expect(chances.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
  });
});

describe('readings of which their reader has no doubt', () => {
  const sure = (reading: PinReading): PinReading => ({ ...reading, doubt: 0 });

  it('say the same of the header as very sure ones, taken once or twice, and also where they contradict', () => {
    const told = [ohms('1', 380), ohms('5', 0.2), ohms('5', 0.2)].map(sure);
    const found = saidOf(PANEL, ...told);
    expect(found.layouts[0]?.origin).toMatchObject({ kind: 'library', type: 'panel-2x5' });
    const against = saidOf(PANEL, ...told, sure(ohms('5', 'open')), sure(volts('5', 'standby', 5)));
    for (const { layouts, pins } of [found, against]) {
      expect(layouts.length).toBeGreaterThan(0);
      for (const { chances } of pins)
        expect(chances.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 6);
    }
  });
});

describe('the published panel header', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2, with the usual values of the stubs.
  it('is told from readings at its pins, every one of them', () => {
    const found = saidOf(
      PANEL,
      ohms('1', 380),
      ohms('5', 0.2),
      ohms('6', 10_100),
      ohms('8', 0.3),
      ohms('9', 'open'),
      volts('6', 'standby', 3.3),
    );
    expect(found.verdict).toBe('identified');
    expect(found.layouts[0]?.origin).toMatchObject({
      kind: 'library',
      type: 'panel-2x5',
      turn: 0,
      mirrored: false,
    });
    expect(found.pins.find(({ pin }) => pin === '5')?.certain?.signal).toBe('ground');
    expect(found.contradictions).toEqual([]);
    const again = saidOf(PANEL, ohms('1', 380), ohms('5', 0.2));
    expect(saidOf(PANEL, ohms('1', 380), ohms('5', 0.2))).toEqual(again);
  });
});
