import { describe, expect, it } from 'vitest';
import { MOMENTS } from '../../../boards/diagnosis/observations/observation';
import { OBSERVATIONS, observationNamed } from '../../../boards/diagnosis/observations/observations';

describe('the vocabulary of what a person can notice', () => {
  it('names no two things by one name', () => {
    const names = OBSERVATIONS.flatMap(({ id, codes }) => [...new Set([id, ...codes])]);
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });

  it('finds each by its id and by each of its codes, and nothing by another name', () => {
    for (const each of OBSERVATIONS)
      for (const name of [each.id, ...each.codes]) expect(observationNamed(name)).toBe(each);
    expect(observationNamed('no_such_thing')).toBeUndefined();
    expect(observationNamed('')).toBeUndefined();
  });

  it('has something for every moment, in the order of a start', () => {
    const order = OBSERVATIONS.map(({ moment }) => MOMENTS.indexOf(moment));
    expect(new Set(order).size).toBe(MOMENTS.length);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it('asks one plain question each, answered by yes or no, and says what yes looks like', () => {
    for (const { question, sign } of OBSERVATIONS) {
      expect(question).toMatch(/^(Are|Do|Does|Has|Is|Was) [^?]+\?$/);
      expect(sign).toMatch(/^[A-Z][^!]+\.$/);
    }
    expect(new Set(OBSERVATIONS.map(({ question }) => question)).size).toBe(OBSERVATIONS.length);
  });

  // Workshop safety, common practice, no source: nothing that burnt is switched on again.
  it('stops at smoke, flame, smell, a bang, sparks, heat and shock, and at nothing harmless', () => {
    const stops = OBSERVATIONS.filter(({ stop }) => stop).map(({ id }) => id);
    expect(stops).toEqual(
      expect.arrayContaining([
        'smoke',
        'flame',
        'smell',
        'pop',
        'spark',
        'hot-part',
        'melted-plug',
        'tingle',
      ]),
    );
    for (const id of ['nothing-on-press', 'no-picture', 'rattle', 'clock-wrong'])
      expect(stops).not.toContain(id);
  });
});
