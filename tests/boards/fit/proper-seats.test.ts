import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Build, Seat } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import type { Lead } from '../../../boards/document/lead';
import type { PlugRef } from '../../../boards/document/lookup';
import { jointsOfPlug } from '../../../boards/fit/joints';
import { matchOf } from '../../../boards/fit/match';
import { placesOf } from '../../../boards/fit/places';
import { properSeats } from '../../../boards/fit/proper-seats';
import { seatedPlug } from '../../../boards/fit/seated-plug';
import { CONNECTOR_TYPES } from '../../../boards/library/connectors/index';
import { LEAD_TYPES } from '../../../boards/library/leads/index';
import { makeConnector } from '../../../boards/library/make-connector';
import { bench, grid, lead, partLead, posts, seat } from '../fixtures/bench';

const PAIR = grid(1, 2);
const place = { xMm: 0, yMm: 0, turn: 0 } as const;
const panel = makeConnector('panel-2x5', { id: 'jfp', print: 'JFP', place });
const powerSwitch = partLead('sw', 'power-switch', PAIR, { a: '1', b: '2' });
const SWITCH: PlugRef = { lead: 'sw', plug: 'plug' };

function proper(connectors: readonly Connector[], plug: Lead): readonly Seat[] {
  return properSeats(bench(connectors, [plug]), { lead: plug.id, plug: 'plug' });
}

describe('where a lead belongs', () => {
  it('puts a switch on its own two pins before the ground of another pair', () => {
    expect(proper([panel], powerSwitch)).toEqual([
      seat('sw', 'jfp', [0, 2], 0),
      seat('sw', 'jfp', [0, 3], 180),
      seat('sw', 'jfp', [0, 2], 90),
      seat('sw', 'jfp', [1, 2], 270),
    ]);
  });

  it('gives an LED one way round only', () => {
    const led = partLead('led', 'drive-led', PAIR, { anode: '1', cathode: '2' });
    expect(proper([panel], led)).toEqual([seat('led', 'jfp', [1, 0], 0)]);
  });

  it('leaves out what another plug covers, and keeps the plug’s own place', () => {
    const leads = [powerSwitch, partLead('reset', 'reset-switch', PAIR, { a: '1', b: '2' })];
    const taken = bench([panel], leads, [seat('reset', 'jfp', [0, 2])]);
    expect(properSeats(taken, SWITCH)).toEqual([]);
    const own = bench([panel], leads, [seat('sw', 'jfp', [0, 2])]);
    expect(properSeats(own, SWITCH)[0]).toEqual(seat('sw', 'jfp', [0, 2]));
  });

  it('finds none for an LED plug that is three wide where its pins lie side by side', () => {
    const wide = partLead('led', 'power-led', grid(1, 3), { anode: '1', cathode: '3' });
    expect(proper([panel], wide)).toEqual([]);
    const threeWide = makeConnector('power-led-1x3', { id: 'pled', print: 'PLED', place });
    expect(proper([panel, { ...threeWide, place: { xMm: 40, yMm: 0, turn: 0 } }], wide)).toEqual([
      seat('led', 'pled', [0, 0], 0),
    ]);
  });

  it('prefers a seat inside the connector to one that hangs over', () => {
    const wide = partLead('led', 'drive-led', grid(1, 3), { anode: '1', cathode: '2' });
    const pair = posts('pair', PAIR, { pins: ['drive-led-feed', 'drive-led-sink'] });
    const seats = proper([pair, { ...panel, place: { xMm: 40, yMm: 0, turn: 0 } }], wide);
    expect(seats).toEqual([seat('led', 'jfp', [1, 0], 0), seat('led', 'pair', [0, 0], 0)]);
  });

  it('takes the port that the part is made for before the other', () => {
    const usb = makeConnector('usb2-2x5', { id: 'jusb', print: 'JUSB', place });
    const row = partLead('usb', 'usb2-port', grid(1, 4), {
      vbus: '1',
      'd-minus': '2',
      'd-plus': '3',
      ground: '4',
    });
    const made = { ...row, parts: row.parts.map((part) => ({ ...part, channel: 'B' })) };
    expect(proper([usb], made)).toEqual([seat('usb', 'jusb', [0, 0]), seat('usb', 'jusb', [1, 0])]);
  });

  it('has no opinion on a cable without a part', () => {
    expect(proper([panel], lead('cable', PAIR, { contacts: ['1', '2'] }))).toEqual([]);
  });
});

describe('against going through every place', () => {
  function rightPlaces(build: Build, ref: PlugRef): readonly Seat[] {
    return placesOf(build, ref).filter((there) => {
      const matches = matchOf(jointsOfPlug(seatedPlug(build, there)));
      return matches.length > 0 && matches.every(({ verdict }) => verdict === 'right');
    });
  }

  const sorted = (seats: readonly Seat[]) => seats.map((each) => JSON.stringify(each)).sort();

  it('finds the same for every lead of the library on boards of library connectors', () => {
    let total = 0;
    fc.assert(
      fc.property(
        fc.subarray([...CONNECTOR_TYPES], { minLength: 3, maxLength: 6 }),
        fc.constantFrom(...LEAD_TYPES),
        (types, { lead: of }) => {
          const connectors = types.map(({ id }, index) =>
            makeConnector(id, { id, print: id, place: { xMm: 0, yMm: index * 25, turn: 0 } }),
          );
          const build = bench(connectors, [of]);
          for (const plug of of.plugs) {
            const ref = { lead: of.id, plug: plug.id };
            const found = properSeats(build, ref);
            total += found.length;
            expect(sorted(found)).toEqual(sorted(rightPlaces(build, ref)));
          }
        },
      ),
      { seed: 11, numRuns: 40 },
    );
    expect(total).toBeGreaterThan(20);
  }, 30_000);
});
