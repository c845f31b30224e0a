import { describe, expect, test } from 'vitest';
import { boardEntries } from '../../../renderer/dialogs/board-entries';
import { cutWords, matches, SHOWN } from '../../../renderer/dialogs/matching';
import { bench, POWER_SWITCH, type TestBench } from '../stand-in';

function find(b: TestBench, entry: string): void {
  boardEntries(b, b.build())
    .find(({ id }) => id === entry)
    ?.run();
}

describe('searching', () => {
  test('takes words in any order and case', () => {
    expect(matches('PANEL, pin 6 power switch', 'switch panel')).toBe(true);
    expect(matches('PANEL, pin 6 power switch', 'reset')).toBe(false);
    expect(matches('anything', '')).toBe(true);
  });

  test('says when not everything is shown', () => {
    expect(cutWords(SHOWN)).toBe('');
    expect(cutWords(1340)).toBe('Showing 60 of 1,340. Type more to narrow the list.');
  });

  test('finds leads, findings, connectors and pins, each by an id of its own', () => {
    const b = bench();
    const ids = boardEntries(b, b.build()).map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)]);
    expect(ids).toEqual(expect.arrayContaining(['lead power-switch plug', 'connector panel', 'pin panel 6']));
    expect(ids.some((id) => id.startsWith('finding '))).toBe(true);
  });

  test('goes to what is found: chosen, and shown on the canvas', () => {
    const b = bench();
    find(b, 'lead power-switch plug');
    expect(b.session.getState()).toMatchObject({
      area: 'wire',
      selection: { kind: 'plug', plug: POWER_SWITCH },
    });
    expect(b.shown).toEqual(['panel']);
  });

  test('goes to what is found from another area, and shows it once the board is drawn', () => {
    const b = bench();
    b.session.getState().goTo('document');
    find(b, 'connector panel');
    expect(b.session.getState()).toMatchObject({
      area: 'wire',
      selection: { kind: 'connector', connector: 'panel' },
      sought: ['panel'],
    });
    expect(b.shown).toEqual([]);
  });
});
