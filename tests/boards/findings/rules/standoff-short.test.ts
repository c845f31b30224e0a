import { describe, expect, test } from 'vitest';
import { analyse } from '../../../../boards/analyse';
import { applyCommand } from '../../../../boards/edit/apply';
import { wordsOf } from '../../../../boards/findings/words';
import { Bench, bench } from '../harness';

/**
 * Hole B stands 8.25 in from the right and 0.4 in from the rear edge (a public drawing script). It is one of
 * a microATX board and none of an ATX board (microATX Motherboard Interface Specification v1.2, 2004, Figure 2).
 */
const B = { id: 'b', name: 'B', xMm: 0.4 * 25.4, yMm: 8.25 * 25.4 };

describe('a standoff that is left in the tray where the board has no hole', () => {
  test('is a danger: it would short the board from below', () => {
    const left = bench().tray('atx', { ...B, seen: 'set' });
    const found = left.finding('standoff-short');
    expect(found).toMatchObject({ severity: 'danger', leads: [], pins: [], data: { standoff: 'b' } });
    expect(wordsOf(found, left.build)).toMatchObject({
      title: 'Standoff\u00a0B would short the board.',
      reason: expect.stringContaining('its metal would touch the underside'),
      source: expect.stringContaining('microATX Motherboard Interface Specification'),
    });
  });

  test('is a doubt while nobody has looked whether it is there, and gone once the place was seen empty', () => {
    const unseen = bench().tray('atx', B);
    const found = unseen.finding('standoff-short');
    expect(found.severity).toBe('doubt');
    expect(wordsOf(found, unseen.build).title).toBe('Standoff\u00a0B would short the board if it is there.');
    const [remedy] = found.remedies;
    expect(remedy?.text).toBe('Look there, and note that the place is empty.');
    const looked = remedy?.command && applyCommand(unseen.build, remedy.command);
    if (!looked?.ok) throw new Error('Refused');
    expect(new Bench(looked.value).codes()).toEqual([]);
  });

  test('cannot be helped where it is pressed into the metal', () => {
    const found = bench()
      .tray('atx', { ...B, fixed: true })
      .finding('standoff-short');
    expect(found.severity).toBe('danger');
    expect(found.remedies).toEqual([{ text: 'Put this board into another case.' }]);
  });

  test('is right for a board that has the hole', () => {
    expect(
      bench()
        .tray('micro-atx', { ...B, seen: 'set' })
        .codes(),
    ).toEqual([]);
  });

  test('is not told of where it lies beside the board', () => {
    expect(
      bench()
        .tray('mini-itx', { ...B, seen: 'set' })
        .codes(),
    ).toEqual([]);
  });
});

test('what is found follows the tray and the outline, also when the wiring stays', () => {
  const { build } = bench().tray('atx', B);
  const codes = (each: typeof build) => analyse(each).findings.map(({ code }) => code);
  expect(codes(build)).toEqual(['standoff-short']);
  const { tray: _, ...bare } = build.case;
  expect(codes({ ...build, case: bare })).toEqual([]);
  const outline = bench().tray('micro-atx').build.board.outline;
  expect(codes({ ...build, board: { ...build.board, outline } })).toEqual([]);
  expect(codes(build)).toEqual(['standoff-short']);
});
