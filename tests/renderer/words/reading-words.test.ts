import { describe, expect, test } from 'vitest';
import { ok } from '../../../boards/base/result';
import type { MeterQuestion } from '../../../boards/pinout/meter/identification';
import { minding, ownRiskWords } from '../../../renderer/words/meter-words';
import {
  answersTo,
  readReading,
  readTolerance,
  toleranceFigures,
} from '../../../renderer/words/reading-words';

const OHMS: MeterQuestion = { kind: 'ohms', pin: '3' };
const VOLTS: MeterQuestion = { kind: 'volts', pin: '3', supply: 'standby' };
const CONTINUITY: MeterQuestion = { kind: 'continuity', pins: ['3', '5'] };
const TOUCH: MeterQuestion = { kind: 'touch', pins: ['6', '8'], supply: 'standby' };
const LAMP: MeterQuestion = { kind: 'lamp', plus: '1', minus: '3', supply: 'running' };

describe('ohms are typed as a meter shows them', () => {
  // Meters show OL, 0L, .OL or 1 for over range (common practice, no source).
  test.each(['OL', 'ol', '0L', '.OL', 'O.L', 'open', '∞'])('%s is open', (typed) => {
    expect(readReading(OHMS, typed)).toEqual(ok({ ...OHMS, ohms: 'open' }));
  });

  test.each([
    ['470', 470],
    ['4.7k', 4700],
    ['4,7 kΩ', 4700],
    ['0', 0],
    ['0.3', 0.3],
    ['1.2M', 1_200_000],
  ])('%s is read as it is meant', (typed, shown) => {
    expect(readReading(OHMS, typed)).toEqual(ok({ ...OHMS, ohms: shown }));
  });

  test.each([
    ['', 'This is no number of ohms. Type one such as 470 or 4.7k, or OL for open.'],
    ['4k7', 'This is no number of ohms. Type one such as 470 or 4.7k, or OL for open.'],
    ['3.3 V', 'This is no number of ohms. Type one such as 470 or 4.7k, or OL for open.'],
    ['10,000', 'This can be read in two ways. Type it without a comma, with a point before tenths.'],
    ['-12', 'A resistance below zero says that the pin is live. Unplug the machine.'],
  ])('“%s” is refused with what would do', (typed, problem) => {
    expect(readReading(OHMS, typed)).toEqual({ ok: false, problem });
  });
});

describe('volts', () => {
  test.each([
    ['3.3', 3.3],
    ['−0.2', -0.2],
    ['-12 V', -12],
    ['330mV', 0.33],
  ])('%s is read as it is meant', (typed, shown) => {
    expect(readReading(VOLTS, typed)).toEqual(ok({ ...VOLTS, volts: shown }));
  });

  test.each(['OL', '', '230'])('“%s” is refused', (typed) => {
    expect(readReading(VOLTS, typed)).toMatchObject({ ok: false, problem: expect.stringContaining('volts') });
  });
});

describe('an answer that is no number', () => {
  test.each([
    [CONTINUITY, '1', { joined: true }],
    [CONTINUITY, 'yes', { joined: true }],
    [CONTINUITY, 'n', { joined: false }],
    [CONTINUITY, 'No beep', { joined: false }],
    [TOUCH, '2', { did: 'started' }],
    [TOUCH, 'nothing', { did: 'nothing' }],
    [TOUCH, 'It started', { did: 'started' }],
    [LAMP, '3', { showed: 'flickers' }],
    [LAMP, 'fl', { showed: 'flickers' }],
  ])('%j is given by its number, its word or the beginning of its words: “%s”', (question, typed, said) => {
    expect(readReading(question, typed)).toEqual(ok({ ...question, ...said }));
  });

  test.each([
    [CONTINUITY, ''],
    [CONTINUITY, '3'],
    [TOUCH, 'it'],
    [TOUCH, '0'],
    [LAMP, '1.5'],
  ])('%j: “%s” may mean several or none, and is refused with how many there are', (question, typed) => {
    const problem = `Type a number from 1 to ${answersTo(question).length}, or press one of the answers.`;
    expect(readReading(question, typed)).toEqual({ ok: false, problem });
  });
});

test('a tolerance is typed in per cent; left empty the usual one holds', () => {
  expect(readTolerance('')).toEqual(ok(undefined));
  expect(readTolerance('5')).toEqual(ok(0.05));
  expect(readTolerance('2,5 %')).toEqual(ok(0.025));
  expect(readTolerance('120').ok).toBe(false);
  expect(readTolerance('some').ok).toBe(false);
});

test('what to mind is said of the reading itself: probes on one pin, a touch on two', () => {
  expect(minding(OHMS)).toContain('Mains plug out');
  expect(minding(VOLTS)).toContain('one probe on bare metal of the case, the other on one pin');
  expect(minding(TOUCH)).toContain('these two pins and no third');
  expect(minding(LAMP)).toContain('these two pins and nothing else');
});

test('a risk is said with its pin and its chance, and never as a certainty of 100 %', () => {
  const said = ownRiskWords({ code: 'may-be-supply', pin: '9', chance: 0.99999 });
  expect(said.replaceAll('\u00a0', ' ')).toBe(
    'Do not join these: pin 9 may be a supply (over 99.9 %). Joined to another pin it could burn a trace.',
  );
});

test('a tolerance is shown in the figures in which it was typed', () => {
  for (const typed of ['7', '0.1', '14', '28', '29', '12.5', '0', '100']) {
    const read = readTolerance(typed);
    expect(read.ok && read.value !== undefined && toleranceFigures(read.value)).toBe(typed);
  }
});
