import { describe, expect, it } from 'vitest';
import type { Connector } from '../../../boards/document/connector';
import { blockOf, USUAL_ROOMS } from '../../../boards/drawing/block';
import { measureByTable } from '../../../boards/drawing/measure';
import { orientationOf } from '../../../boards/drawing/orientation';
import { SIZES } from '../../../boards/drawing/sizes';

const VIEW = orientationOf({ turn: 0, mirrored: false });

/** A single row of pins with these names. */
function row(names: readonly string[], pitchMm = 2.54, turn: 0 | 90 = 0): Connector {
  return {
    id: 'j1',
    print: 'J1',
    title: 'header',
    family: 'pin-header',
    grid: { rows: 1, cols: names.length, pitchMm, numbering: { scheme: 'by-row', from: 'top-left' } },
    pins: names.map((name, index) => ({ pin: String(index + 1), name })),
    place: { xMm: 0, yMm: 0, turn },
  };
}

function namesOf(connector: Connector) {
  return blockOf(connector, VIEW, USUAL_ROOMS, measureByTable).names;
}

describe('a name that does not fit its column', () => {
  it('short names stand on one line, level', () => {
    expect(namesOf(row(['+5 V', 'GND', 'reset']))).toMatchObject([
      { lines: ['+5 V'], upright: false, sizeMm: SIZES.name },
      { lines: ['GND'], upright: false, sizeMm: SIZES.name },
      { lines: ['reset'], upright: false, sizeMm: SIZES.name },
    ]);
  });

  it('first wraps, and a sign stays with its word', () => {
    expect(namesOf(row(['power switch', 'drive LED +', 'over-current']))).toMatchObject([
      { lines: ['power', 'switch'] },
      { lines: ['drive', 'LED +'] },
      { lines: ['over-', 'current'] },
    ]);
  });

  it('then all names of its edge get smaller together', () => {
    const [long, short] = namesOf(row(['controller', 'GND']));
    expect(long).toMatchObject({ lines: ['controller'], upright: false });
    expect(long?.sizeMm).toBeLessThan(SIZES.name);
    expect(short?.sizeMm).toBe(long?.sizeMm);
  });

  it('then they stand upright', () => {
    expect(namesOf(row(['temperature', 'GND']))).toMatchObject([
      { lines: ['temperature'], upright: true },
      { lines: ['GND'], upright: true },
    ]);
  });

  it('at last it is cut short, and the whole name stays known', () => {
    const whole = 'Donaudampfschifffahrtselektrizitätenhauptbetriebswerk';
    const [name] = namesOf(row([whole, 'GND']));
    expect(name?.full).toBe(whole);
    expect(name?.lines[0]).toMatch(/^Donau.*…$/);
  });

  it('beside a standing row of pins names are level, and nothing is turned', () => {
    const names = namesOf(row(['temperature sensor', 'GND'], 2.54, 90));
    expect(names.map(({ upright }) => upright)).toEqual([false, false]);
    expect(names[0]).toMatchObject({ lines: ['temperature sensor'], align: 'end' });
  });

  it('at half the pitch names stand upright, one line each', () => {
    const names = namesOf(row(['GND', 'A+', 'A−', 'GND', 'B−', 'B+', 'GND'], 1.27));
    expect(names.every(({ upright, lines }) => upright || lines.length === 1)).toBe(true);
  });
});

describe('what stands beside a pin', () => {
  it('the manual’s name before the signal’s, and “no pin” where none stands', () => {
    const connector: Connector = {
      ...row(['', '', '', '']),
      pins: [
        { pin: '1', name: 'PWRBT#', signal: 'power-switch-input' },
        { pin: '2', signal: 'ground' },
        { pin: '3', missing: true },
      ],
    };
    expect(namesOf(connector).map(({ full }) => full)).toEqual(['PWRBT#', 'ground', 'no pin', 'unknown']);
  });
});
