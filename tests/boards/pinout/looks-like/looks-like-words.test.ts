import { describe, expect, it } from 'vitest';
import type { KnownLayout } from '../../../../boards/pinout/looks-like/known-layout';
import { type Likeness, looksLike } from '../../../../boards/pinout/looks-like/likeness';
import {
  cautionWords,
  fromWords,
  orientationWords,
  outcomeWords,
  scoreWords,
  tallyWords,
} from '../../../../boards/pinout/looks-like/looks-like-words';
import { ORIENTATIONS } from '../../../../boards/pinout/looks-like/orientation';
import { header } from './headers';

const NBSP = '\u00a0';

function firstOf(here: Parameters<typeof looksLike>[0], ...layouts: readonly KnownLayout[]): Likeness {
  const found = looksLike(here, layouts);
  const first = found.outcome === 'found' ? found.likenesses[0] : undefined;
  if (first === undefined) throw new Error('Nothing is close');
  return first;
}

describe('a likeness in words', () => {
  it('says each of the eight ways to lie in words of its own', () => {
    const words = ORIENTATIONS.map(orientationWords);
    expect(new Set(words).size).toBe(8);
    expect(words.slice(0, 2)).toEqual(['as drawn', 'turned by half']);
    expect(words[5]).toBe('in mirror, turned by half');
  });

  it('counts what agrees and what does not', () => {
    const here = header(['power-led-feed power-led-sink key ground reset-switch-input ps-on']);
    const there = header(['power-led-feed power-led-feed key ground reset-switch-input ?']);
    expect(tallyWords(firstOf(here, { from: 'mine', connector: there }).tally)).toBe(
      '4 of 6 known pins agree, 1 partly, 1 not said there',
    );
  });

  it('names the pin that tells apart what matches equally well', () => {
    const here = header(['ground ? ? ?']);
    const fan = { from: 'mine', connector: header(['ground fan-supply fan-tach fan-pwm']) };
    const slow = { from: 'mine', connector: header(['ground fan-supply fan-tach no-connection']) };
    const other = { from: 'mine', connector: header(['ground supply-12v fan-tach no-connection']) };
    const words = (...layouts: readonly KnownLayout[]) => outcomeWords(here, looksLike(here, layouts));
    expect(words(fan)).toBe('One is close.');
    expect(words(fan, slow)).toBe(
      `The first 2 match what is known so far equally well. Pin${NBSP}4 tells them apart.`,
    );
    expect(words(fan, slow, other)).toBe(
      `The first 3 match what is known so far equally well. Pin${NBSP}2 tells most of them apart.`,
    );
    const mixed = header(['ground supply-12v ? ?']);
    expect(outcomeWords(mixed, looksLike(mixed, [fan, other]))).toMatch(/^One matches best/);
  });

  it('says 100 only where everything agrees', () => {
    expect([1, 0.999, 0.6].map(scoreWords)).toEqual([`100${NBSP}%`, `99${NBSP}%`, `60${NBSP}%`]);
  });

  it('warns of a mirror, another shape, another pitch and other numbers', () => {
    const here = header(['ground fan-supply fan-tach fan-pwm', '? ? ? ?']);
    const row = header(['ground fan-supply fan-tach fan-pwm']);
    const there = { ...row, grid: { ...row.grid, pitchMm: 2 } };
    expect(cautionWords(here, firstOf(here, { from: 'mine', connector: there }))).toEqual([
      `Another shape: it has 1${NBSP}×${NBSP}4 positions, this one 2${NBSP}×${NBSP}4.`,
      `Another pitch: 2${NBSP}mm there, 2.54${NBSP}mm here.`,
    ]);
    const square = header(['ground fan-supply', 'fan-tach key']);
    const mirrored = header(['fan-supply ground', 'key fan-tach']);
    expect(cautionWords(square, firstOf(square, { from: 'mine', connector: mirrored }))).toEqual([
      'In mirror: one of the two may have been drawn from below. Look at the key on the board itself.',
      'Counted otherwise: the places are compared, not the numbers.',
    ]);
  });

  it('names those that cannot be told apart, and counts them when there are many', () => {
    const copies = ['a', 'b', 'c', 'd', 'e'].map((from) => ({ from, connector: header(['ground key']) }));
    expect(fromWords(firstOf(header(['ground key']), ...copies))).toBe('a, b, c and 2 more');
    expect(fromWords(firstOf(header(['ground key']), ...copies.slice(0, 1)))).toBe('a');
    const [one, two] = copies;
    if (one === undefined || two === undefined) throw new Error('There are five copies');
    const renamed = { from: two.from, connector: { ...two.connector, title: 'another' } };
    expect(fromWords(firstOf(header(['ground key']), one, renamed))).toBe('a and b (as another)');
  });
});
