import { describe, expect, it } from 'vitest';
import type { Lead } from '../../../boards/document/lead';
import { jointsOf } from '../../../boards/fit/joints';
import { bench, grid, partLead, posts, seat } from '../fixtures/bench';

const PANEL = posts('jfp', grid(1, 4), { pins: ['drive-led-feed', null, 'drive-led-sink', 'ground'] });

function told(...of: Parameters<typeof bench>) {
  return jointsOf(bench(...of)).map(({ hole, pin, landing, part, terminal, wire }) => ({
    hole,
    touches: pin?.pin ?? null,
    over: landing.pin?.pin ?? null,
    end: part && terminal ? `${part.kind} ${terminal.id}` : null,
    colour: wire.colour,
  }));
}

describe('what touches what', () => {
  it('is told for each contact, by hole, with the part behind its wire', () => {
    const led = partLead('led', 'drive-led', grid(1, 3), { cathode: '3', anode: '1' });
    expect(told([PANEL], [led], [seat('led', 'jfp')])).toEqual([
      { hole: '1', touches: '1', over: '1', end: 'drive-led anode', colour: 'black' },
      { hole: '3', touches: '3', over: '3', end: 'drive-led cathode', colour: 'black' },
    ]);
  });

  it('a contact over a gap touches nothing, and so does one past the edge', () => {
    const led = partLead('led', 'drive-led', grid(1, 4), { anode: '2', cathode: '4' });
    expect(told([PANEL], [led], [seat('led', 'jfp', [0, 0])])[0]).toMatchObject({ touches: null, over: '2' });
    expect(told([PANEL], [led], [seat('led', 'jfp', [0, 2])])[1]).toMatchObject({
      touches: null,
      over: null,
    });
  });

  it('two wires crimped into one contact are two joints', () => {
    const led = partLead('led', 'drive-led', grid(1, 1), { anode: '1', cathode: '1' });
    expect(told([PANEL], [led], [seat('led', 'jfp')]).map(({ end }) => end)).toEqual([
      'drive-led anode',
      'drive-led cathode',
    ]);
  });

  it('a wire of a cable has no part behind it, at either of its plugs', () => {
    const cable: Lead = {
      id: 'cable',
      name: 'Cable',
      parts: [],
      plugs: [
        { id: 'plug', print: '', family: 'pin-header', grid: grid(1, 1) },
        { id: 'other', print: '', family: 'pin-header', grid: grid(1, 1) },
      ],
      wires: [{ from: 'plug.1', to: 'other.1', colour: 'red' }],
    };
    const seats = [seat('cable', 'jfp'), { ...seat('cable', 'jfp', [0, 3]), plug: 'other' }];
    expect(told([PANEL], [cable], seats)).toEqual([
      { hole: '1', touches: '1', over: '1', end: null, colour: 'red' },
      { hole: '1', touches: '4', over: '4', end: null, colour: 'red' },
    ]);
  });

  it('throws on a seat of a lead that is not there, which no file and no command can make', () => {
    expect(() => jointsOf(bench([PANEL], [], [seat('led', 'jfp')]))).toThrow('No such plug');
  });
});
