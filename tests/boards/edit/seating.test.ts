import { describe, expect, it } from 'vitest';
import { labelOf } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { bench, grid, partLead, posts, seat } from '../fixtures/bench';
import { done, toldNo } from './carried-out';

const NBSP = '\u00a0';

const power = partLead('power-sw', 'power-switch', grid(1, 2), { a: '1', b: '2' });
const reset = partLead('reset-sw', 'reset-switch', grid(1, 2), { a: '1', b: '2' });
const light = partLead('power-led', 'power-led', grid(1, 3), { anode: '1', cathode: '3' });
const panel = posts('panel', grid(2, 5), { pins: ['drive-led-feed'] });
const fine = posts('fine', grid(1, 4, { pitchMm: 2 }), { place: { xMm: 0, yMm: 60, turn: 0 } });
const onTheBench = bench([panel, fine], [power, reset, light]);

function put(lead: string, at: [number, number], turn: 0 | 90 | 180 | 270 = 0, connector = 'panel'): Command {
  return { name: 'seat-plug', args: seat(lead, connector, at, turn) };
}

function turn(lead: string, by: 90 | 180 | 270): Command {
  return { name: 'turn-plug', args: { lead, plug: 'plug', by } };
}

function off(lead: string): Command {
  return { name: 'unseat-plug', args: { lead, plug: 'plug' } };
}

describe('seating a plug', () => {
  it('puts it where it fits, and moves it when it sits already', () => {
    const seated = done(onTheBench, put('power-sw', [0, 0]), put('reset-sw', [1, 0]));
    expect(seated.seats).toEqual([seat('power-sw', 'panel', [0, 0]), seat('reset-sw', 'panel', [1, 0])]);
    const moved = done(seated, put('power-sw', [0, 3], 180));
    expect(moved.seats).toEqual([seat('power-sw', 'panel', [0, 3], 180), seat('reset-sw', 'panel', [1, 0])]);
  });

  it('is called seating the first time and moving after that', () => {
    expect(labelOf(onTheBench, put('power-sw', [0, 0]))).toBe('Seat POWER-SW');
    expect(labelOf(done(onTheBench, put('power-sw', [0, 0])), put('power-sw', [0, 1]))).toBe('Move POWER-SW');
  });

  it('takes up a lead that had been set aside', () => {
    const aside = done(onTheBench, { name: 'set-lead-aside', args: { lead: 'power-sw', aside: true } });
    expect(done(aside, put('power-sw', [0, 0])).case.leads[0]).toEqual(power);
  });

  it('is refused where the plug does not fit, with the reason of the fit', () => {
    const seated = done(onTheBench, put('reset-sw', [0, 1]));
    expect(toldNo(seated, put('power-sw', [0, 0]))).toBe(
      `POWER-SW does not fit there on PANEL. RESET-SW already sits on pin${NBSP}2.`,
    );
    expect(toldNo(seated, put('power-sw', [0, 0], 0, 'fine'))).toBe(
      `POWER-SW does not fit there on FINE. The holes are 2.54${NBSP}mm apart, the pins 2.00${NBSP}mm.`,
    );
    expect(toldNo(seated, put('power-sw', [5, 5]))).toBe(
      'POWER-SW does not fit there on PANEL. No pin would enter any hole.',
    );
  });

  it('is refused for a lead, a plug or a connector that is not there', () => {
    expect(toldNo(onTheBench, put('buzzer', [0, 0]))).toBe('There is no lead “buzzer” in this build.');
    const plug: Command = { name: 'seat-plug', args: { ...seat('power-sw', 'panel'), plug: 'second' } };
    expect(toldNo(onTheBench, plug)).toBe('POWER-SW has no plug “second”.');
    expect(toldNo(onTheBench, put('power-sw', [0, 0], 0, 'speaker'))).toBe(
      'There is no connector “speaker” on this board.',
    );
  });

  it('is refused for one more than a build can hold', () => {
    const crowd = Array.from({ length: 10_000 }, (_, at) => seat(`lead-${at}`, 'panel'));
    const leads = crowd.map(({ lead }) => ({ ...power, id: lead }));
    const full = bench(
      [panel, posts('other', grid(1, 2), { place: { xMm: 0, yMm: 60, turn: 0 } })],
      leads,
      crowd,
    );
    const one = { ...full, extras: [{ ...power, id: 'one-more' }] };
    expect(toldNo(one, put('one-more', [0, 0], 0, 'other'))).toBe(
      `A build can hold no more than 10,000${NBSP}seats.`,
    );
  });

  it('is refused for a place that no file can hold, with what was expected', () => {
    expect(toldNo(onTheBench, put('power-sw', [0, 0.5]))).toBe(
      '“at[1]” cannot be kept: it has to be a whole number from -64 to 128, and is 0.5.',
    );
  });
});

describe('turning a plug', () => {
  it('by half leaves it on the same pins the other way round', () => {
    const seated = done(onTheBench, put('power-led', [0, 1]));
    const turned = done(seated, turn('power-led', 180));
    expect(turned.seats).toEqual([seat('power-led', 'panel', [0, 3], 180)]);
    expect(done(turned, turn('power-led', 180)).seats).toEqual(seated.seats);
  });

  it('by a quarter lays it across the rows beside where it lay', () => {
    const seated = done(onTheBench, put('power-sw', [1, 2]));
    expect(done(seated, turn('power-sw', 90)).seats).toEqual([seat('power-sw', 'panel', [0, 2], 90)]);
    expect(done(seated, turn('power-sw', 270)).seats).toEqual([seat('power-sw', 'panel', [1, 2], 270)]);
  });

  it('by a quarter goes to the free side when the other is taken', () => {
    const seated = done(onTheBench, put('power-sw', [1, 2]), put('reset-sw', [0, 1]));
    expect(done(seated, turn('power-sw', 90)).seats[0]).toEqual(seat('power-sw', 'panel', [0, 3], 90));
  });

  it('by a quarter hangs over the edge rather than not at all', () => {
    const seated = done(onTheBench, put('power-sw', [0, 1]), put('reset-sw', [1, 1]));
    expect(done(seated, turn('power-sw', 90)).seats[0]).toEqual(seat('power-sw', 'panel', [-1, 1], 90));
  });

  it('is refused where it would fit nowhere near', () => {
    const walled = posts('walled', grid(2, 5), { shroud: { walls: ['top', 'right', 'bottom', 'left'] } });
    const seated = done(
      bench([walled], [power, reset]),
      put('power-sw', [0, 1], 0, 'walled'),
      put('reset-sw', [1, 1], 0, 'walled'),
    );
    expect(toldNo(seated, turn('power-sw', 90))).toMatch(/^POWER-SW does not fit there on WALLED\. \S/);
  });

  it('is refused for a plug that does not sit', () => {
    expect(toldNo(onTheBench, turn('power-sw', 90))).toBe('POWER-SW does not sit anywhere. Seat it first.');
  });
});

describe('taking plugs off', () => {
  const seated = done(onTheBench, put('power-sw', [0, 0]), put('reset-sw', [1, 0]));

  it('takes off one, or all', () => {
    expect(done(seated, off('power-sw')).seats).toEqual([seat('reset-sw', 'panel', [1, 0])]);
    expect(done(seated, { name: 'unseat-all', args: {} }).seats).toEqual([]);
  });

  it('is refused for a plug that does not sit', () => {
    expect(toldNo(seated, off('power-led'))).toBe('POWER-LED does not sit anywhere. Seat it first.');
  });
});
