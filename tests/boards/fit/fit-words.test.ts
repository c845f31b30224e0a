import { describe, expect, it } from 'vitest';
import { SIDES } from '../../../boards/document/connector';
import type { FitRefusal } from '../../../boards/fit/fit';
import { overhangWords, refusalWords } from '../../../boards/fit/fit-words';
import { bench, grid, lead, posts } from '../fixtures/bench';

const build = bench(
  [
    posts('jfp', grid(2, 5, { numbering: { scheme: 'zig-zag', from: 'bottom-left' } }), {
      print: 'JFP',
      shroud: { walls: [...SIDES], guide: 'bottom' },
    }),
    posts('speaker', grid(1, 4), { print: '', title: 'speaker' }),
  ],
  [lead('power-sw', grid(1, 2), { print: 'POWER SW' })],
);

/** The words with their no-break spaces made plain, to be read here. */
function words(refusal: FitRefusal): string {
  return refusalWords(refusal, build).replaceAll('\u00a0', ' ');
}

describe('why a plug does not fit, in words', () => {
  const by = { lead: 'power-sw', plug: 'plug' };
  it.each<[FitRefusal, string]>([
    [
      { code: 'family', plug: 'pin-header', connector: 'sata-data' },
      'A plug of the shape “pin header” does not enter “sata data”.',
    ],
    [{ code: 'pitch', plugMm: 2.54, connectorMm: 2 }, 'The holes are 2.54 mm apart, the pins 2.00 mm.'],
    [{ code: 'blocked-hole', hole: '10', pin: '7' }, 'Hole 10 is blocked and would meet pin 7.'],
    [{ code: 'no-hole', pin: '7' }, 'Pin 7 would meet the plug where it has no hole.'],
    [{ code: 'occupied', by, pins: ['6', '8'] }, 'POWER SW already sits on pins 6 and 8.'],
    [{ code: 'occupied', by, pins: ['6'] }, 'POWER SW already sits on pin 6.'],
    [{ code: 'occupied', by, pins: ['1', '2', '3', '4', '5'] }, 'POWER SW already sits on 5 of these pins.'],
    [{ code: 'occupied', by, pins: [] }, 'POWER SW is in the way.'],
    [{ code: 'wall', side: 'top', connector: 'jfp' }, 'The wall along pins 2 to 10 is in the way.'],
    [{ code: 'wall', side: 'left', connector: 'jfp' }, 'The wall along pins 1 and 2 is in the way.'],
    [{ code: 'wall', side: 'right', connector: 'speaker' }, 'The wall along pin 4 is in the way.'],
    [
      { code: 'guide', side: 'bottom', connector: 'jfp' },
      'The plug’s rib has to face the guide along pins 1 to 9.',
    ],
    [
      { code: 'rib', side: 'top', connector: 'jfp' },
      'The plug’s rib would meet the wall along pins 2 to 10, which has no slot.',
    ],
    [{ code: 'obstructed', by: 'jfp' }, 'The part that hangs over would meet JFP.'],
    [{ code: 'obstructed', by: 'speaker' }, 'The part that hangs over would meet speaker.'],
    [{ code: 'no-pin' }, 'No pin would enter any hole.'],
  ])('%j', (refusal, sentence) => {
    expect(words(refusal)).toBe(sentence);
  });

  it('keeps a number and its unit on one line', () => {
    expect(refusalWords({ code: 'pitch', plugMm: 2.54, connectorMm: 2 }, build)).toContain('2.54\u00a0mm');
  });
});

describe('what hangs over, in words', () => {
  it('says nothing where nothing hangs over', () => {
    expect(overhangWords([])).toBe('');
  });

  it('names one hole or several', () => {
    expect(overhangWords(['3'])).toBe('Hole\u00a03 hangs over the edge and meets nothing.');
    expect(overhangWords(['3', '4'])).toBe('Holes\u00a03 and 4 hang over the edge and meet nothing.');
  });
});
