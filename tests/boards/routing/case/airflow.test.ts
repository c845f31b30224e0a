import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FanPlace, Tray } from '../../../../boards/document/tray';
import { airflowOf, directionOf } from '../../../../boards/routing/case/airflow';
import { AIRFLOW_SOURCE, airflowWords } from '../../../../boards/routing/case/airflow-words';

function fan(id: string, strutsFace?: 'inward' | 'outward', flowM3PerHour?: number): FanPlace {
  return {
    id,
    wall: 'front',
    ...(strutsFace && { strutsFace }),
    ...(flowM3PerHour !== undefined && { flowM3PerHour }),
  };
}

function trayWith(fans: readonly FanPlace[]): Tray {
  const empty = { points: [], openings: [], bays: [], paths: [] };
  return { widthMm: 420, heightMm: 440, ...empty, fans: [...fans] };
}

function said(fans: readonly FanPlace[]): readonly string[] {
  return airflowWords(airflowOf(fans), trayWith(fans));
}

describe('a fan', () => {
  it('blows where its struts are (common practice, no source)', () => {
    expect(directionOf(fan('low', 'inward'))).toBe('intake');
    expect(directionOf(fan('low', 'outward'))).toBe('exhaust');
    expect(directionOf(fan('low'))).toBeUndefined();
    expect(AIRFLOW_SOURCE).toBe('common practice, no source');
  });
});

describe('the fans of a case together', () => {
  it('blow in and out by the sums of their makers’ figures', () => {
    expect(said([fan('a', 'inward', 80), fan('b', 'inward', 80), fan('c', 'outward', 90)])).toEqual([
      '2\u00a0fans blow in (up to 160\u00a0m³/h), 1\u00a0fan blows out (up to 90\u00a0m³/h).',
      'By the makers’ figures more is blown in than out. Makers measure with nothing in the way; in the case each fan moves less.',
    ]);
    expect(airflowOf([fan('a', 'inward', 90), fan('b', 'outward', 100)]).balance).toBe('even');
    expect(airflowOf([fan('a', 'inward', 89), fan('b', 'outward', 100)]).balance).toBe('more-out');
  });

  it('are only counted where one has no figure', () => {
    expect(said([fan('a', 'inward', 80), fan('b', 'inward'), fan('c', 'outward', 90)])).toEqual([
      '2\u00a0fans blow in, 1\u00a0fan blows out (up to 90\u00a0m³/h).',
    ]);
  });

  it('are said to lack a direction only when all have been looked at', () => {
    expect(said([fan('c', 'outward')])).toEqual([
      'None blows in, 1\u00a0fan blows out.',
      'No fan blows in: air comes through every gap there is, past no filter.',
    ]);
    expect(said([fan('c', 'inward'), fan('d')])).toEqual([
      '1\u00a0fan blows in, none blows out.',
      'Not looked at: fan\u00a02.',
    ]);
    expect(said([])).toEqual([]);
  });

  it('change roles when every fan is turned round', () => {
    const ways = fc.option(fc.constantFrom('inward' as const, 'outward' as const), { nil: undefined });
    const flows = fc.option(fc.integer({ min: 1, max: 300 }), { nil: undefined });
    const round = { 'more-in': 'more-out', 'more-out': 'more-in', even: 'even', unknown: 'unknown' } as const;
    fc.assert(
      fc.property(fc.array(fc.tuple(ways, flows), { maxLength: 9 }), (drawn) => {
        const fans = drawn.map(([way, flow], at) => fan(`fan-${at}`, way, flow));
        const turned = drawn.map(([way, flow], at) =>
          fan(`fan-${at}`, way && (way === 'inward' ? 'outward' : 'inward'), flow),
        );
        const [before, after] = [airflowOf(fans), airflowOf(turned)];
        expect(after.intake).toEqual(before.exhaust);
        expect(after.exhaust).toEqual(before.intake);
        expect(after.balance).toBe(round[before.balance]);
        expect(before.intake.fans.length + before.exhaust.fans.length + before.unseen.length).toBe(
          fans.length,
        );
      }),
    );
  });
});
