import { describe, expect, test } from 'vitest';
import type { Build, Seat } from '../../../boards/document/build';
import { leadsOf, type PlugRef, samePlug } from '../../../boards/document/lookup';
import { findingsOf } from '../../../boards/findings/findings';
import { jointsOfPlug } from '../../../boards/fit/joints';
import { placesOf } from '../../../boards/fit/places';
import { seatedPlug } from '../../../boards/fit/seated-plug';
import { demo } from './demo';

/**
 * Where each plug of the demo may sit with nothing lost: the pin under every wire, hole by hole. Written
 * from the pin orders of the published headers, not from the program.
 */
const EQUAL: Readonly<Record<string, readonly string[]>> = {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2: the input is pin 6, 5 and 8 are both ground.
  'power-switch': ['panel 6 8', 'panel 8 6', 'panel 6 5', 'panel 5 6'],
  // The same: the input is pin 7.
  'reset-switch': ['panel 7 5', 'panel 5 7', 'panel 7 8', 'panel 8 7'],
  // The same, polarity from assembly notes: + is the lower number.
  'drive-led': ['panel 1 3'],
  'power-led': ['panel 2 4'],
  // Common practice, no source: a speaker works either way round, and so does a switch in the lid.
  speaker: ['speaker 1 4', 'speaker 4 1'],
  'case-open': ['case-open 1 2', 'case-open 2 1'],
  // USB 2.0 header, board product guides: odd pins one port, even pins the other; any port will do.
  'front-usb': ['usb-1 1 2 3 4 5 6 7 8', 'usb-2 1 2 3 4 5 6 7 8'],
  'card-reader': ['usb-1 1 3 5 7', 'usb-1 2 4 6 8', 'usb-2 1 3 5 7', 'usb-2 2 4 6 8'],
  // 19-pin order of a board manual (read in secondary): one way only.
  'front-usb3': ['usb3 1 2 3 4 5 6 7 8 9 11 12 13 14 15 16 17 18 19'],
  // The same guide, Figure 4: pin 8 is the key, one way only.
  'front-audio': ['audio 1 2 3 4 5 6 7 9 10'],
  // 1394a header of a board product guide: pin 9 is the key, one way only.
  'front-1394': ['f1394 1 2 3 4 5 6 7 8 10'],
  // 4-Wire PWM Controlled Fans Specification rev 1.3, Table 1; an open PWM wire means full speed.
  'cpu-fan': ['fan-cpu 1 2 3 4', 'fan-front 1 2 3 4', 'fan-rear 1 2 3 -'],
  'rear-fan': ['fan-rear 1 2 3', 'fan-front 1 2 3', 'fan-cpu 1 2 3'],
  // Clear-settings jumper, common practice, no source: the cap on 1-2 keeps.
  'clear-cap': ['clear 1 2', 'clear 2 1'],
};

/** Says nothing of where a plug is, only of what is known about its pins or what hangs over. */
const BESIDE_THE_POINT = new Set(['pin-unsure', 'overhang']);

const WIRED = demo('wired');
const PLUGS = leadsOf(WIRED).flatMap((lead) => lead.plugs.map((plug) => ({ lead: lead.id, plug: plug.id })));

/** "panel 6 8": connector, then the pin under each wired hole in turn; "-" where there is none. */
function pinsUnder(build: Build, seat: Seat): string {
  const joints = jointsOfPlug(seatedPlug(build, seat));
  const byHole = new Map(joints.map(({ hole, pin }) => [hole, pin?.pin ?? '-']));
  return [seat.connector, ...byHole.values()].join(' ');
}

function isToldOf(build: Build, lead: string): boolean {
  return findingsOf(build).some(({ code, leads }) => leads.includes(lead) && !BESIDE_THE_POINT.has(code));
}

/** The demo without the plug, and the bare board with nothing but its lead. */
const AROUND = {
  'with every other lead in its place': ({ lead, plug }: PlugRef): Build => ({
    ...WIRED,
    seats: WIRED.seats.filter((seat) => !samePlug(seat, { lead, plug })),
  }),
  'alone on the board': ({ lead }: PlugRef): Build => ({
    ...WIRED,
    seats: [],
    extras: leadsOf(WIRED).filter(({ id }) => id === lead),
    case: { ...WIRED.case, leads: [] },
  }),
} as const;

/** Every seat the plug could be put in, each with whether anything is said about it. */
function everySeat(around: Build, ref: PlugRef) {
  return placesOf(around, ref).map((seat) => {
    const build = { ...around, seats: [...around.seats, seat] };
    return { pins: pinsUnder(build, seat), told: isToldOf(build, ref.lead) };
  });
}

test('the table has every lead of the demo', () => {
  expect(PLUGS.map(({ lead }) => lead).toSorted()).toEqual(Object.keys(EQUAL).toSorted());
});

describe.each(Object.entries(AROUND))('one plug put anywhere it fits, %s', (_, around) => {
  test.each(PLUGS)(
    '$lead: something is said of every seat but the equal ones, and nothing of those',
    (ref) => {
      const seats = everySeat(around(ref), ref);
      const equal = new Set(EQUAL[ref.lead]);
      expect(seats.some(({ pins }) => equal.has(pins))).toBe(true);
      expect(seats.filter(({ pins, told }) => !told && !equal.has(pins))).toEqual([]);
      expect(seats.filter(({ pins, told }) => told && equal.has(pins))).toEqual([]);
    },
    60_000,
  );
});
