import { describe, expect, it } from 'vitest';
import { faultsAsWritten } from '../../boards/diagnosis/faults/as-written';
import type { Build, Seat } from '../../boards/document/build';
import { placeWords } from '../../renderer/areas/diagnose/suspects/place-words';
import { suspectedPlace } from '../../renderer/areas/diagnose/suspects/suspected-place';
import { exchangedWords, movedWords } from '../../renderer/words/suspected-words';
import { demo } from '../boards/findings/demo';

const build = demo('wired');
const seatOf = (lead: string): Seat => {
  const seat = build.seats.find((each) => each.lead === lead);
  if (!seat) throw new Error(`${lead} is not seated`);
  return seat;
};
const [power, reset] = [seatOf('power-switch'), seatOf('reset-switch')];
const suspected = (id: string, on: Build = build) => {
  const fault = faultsAsWritten(build).find((each) => each.id === id);
  if (!fault) throw new Error(`No fault ${id}`);
  return suspectedPlace(on, { ...fault, chance: 1 });
};

describe('the place that a suspected fault is about', () => {
  it('is where the plug would be, one pin on', () => {
    const at = power.at.join('.');
    const shifted = faultsAsWritten(build).find(
      ({ id, seat }) => id.startsWith('power-switch/plug/shifted') && seat,
    );
    if (!shifted?.seat) throw new Error(`No pin is free beside ${at}`);
    expect(suspectedPlace(build, { ...shifted, chance: 1 })).toEqual({
      kind: 'moved',
      now: power,
      seat: shifted.seat,
    });
    expect(movedWords(build, power, shifted.seat)).toMatch(/^Dashed: where it may sit: PANEL, pins?\s/);
  });

  it('is that of the other, and of the other that of the one, where two have changed places', () => {
    const place = suspected('power-switch/plug/exchanged/reset-switch');
    if (place?.kind !== 'exchanged') throw new Error('They have changed places');
    const where = place.seats.map(({ lead, connector, at }) => ({ lead, connector, at }));
    expect(where).toEqual([
      { lead: 'power-switch', connector: reset.connector, at: reset.at },
      { lead: 'reset-switch', connector: power.connector, at: power.at },
    ]);
    expect(exchangedWords(build, place.seats)).toMatch(/Power switch on PANEL.*; Reset switch on PANEL/);
  });

  it('is its own, empty, where the plug is off, and none where a switch is stuck', () => {
    expect(suspected('power-switch/plug/off/')).toEqual({
      kind: 'off',
      plug: { lead: 'power-switch', plug: 'plug' },
    });
    expect(suspected('power-switch/switch/stuck')).toBeUndefined();
    expect(suspectedPlace(build, undefined)).toBeUndefined();
  });

  it('is said to be as written where the build itself has it so', () => {
    const off: Build = { ...build, seats: build.seats.filter(({ lead }) => lead !== 'power-switch') };
    expect(suspected('power-switch/plug/off/', off)).toEqual({ kind: 'as-written' });
    const fault = { id: 'any', name: 'Any.', chance: 1, lead: 'power-switch', seat: { ...power } };
    expect(suspectedPlace(build, fault)).toEqual({ kind: 'as-written' });
  });

  it('tells a plug the other way round from one that is only moved', () => {
    expect(movedWords(build, power, { ...power, turn: 180 })).toMatch(/, the other way round\.$/);
    expect(movedWords(build, power, { ...power, turn: 90 })).toMatch(/, turned by a quarter\.$/);
  });

  it('is told in words, also where nothing is outlined; no place is only said where there is none', () => {
    const none = 'This suspect has no place among the leads of this build.';
    const asWritten = 'It is written down just so in this build.';
    expect(placeWords(build, [], undefined)).toBe(none);
    expect(placeWords(build, [], { kind: 'as-written' })).toBe(asWritten);
    expect(placeWords(build, ['power-switch'], { kind: 'as-written' })).toBe(
      `Outlined: Power switch. ${asWritten}`,
    );
    expect(placeWords(build, ['power-switch'], undefined)).toBe('Outlined: Power switch.');
  });
});
