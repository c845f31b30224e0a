import { describe, expect, test } from 'vitest';
import { seatOf } from '../../../boards/document/lookup';
import { runAction } from '../../../renderer/actions/actions';
import {
  cancelHand,
  carry,
  drag,
  pressKey,
  seatHand,
  seatOnPin,
} from '../../../renderer/areas/wire/placing/hand';
import { type PlacingKey, placingKey } from '../../../renderer/areas/wire/placing/keys';
import type { Area } from '../../../renderer/store/session';
import { bench, POWER_SWITCH, type TestBench } from '../stand-in';

function bareBench(): TestBench {
  const b = bench();
  b.run({ name: 'unseat-all', args: {} });
  return b;
}

function press(b: TestBench, ...keys: string[]): void {
  for (const key of keys) {
    const meant = placingKey({ key, shiftKey: false, ctrlKey: false, metaKey: false, altKey: false });
    if (!meant) throw new Error(`${key} means nothing`);
    pressKey(b, meant);
  }
}

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('a plug carried by keys', () => {
  test('begins where it belongs, and says where that is and that it fits', () => {
    const b = bareBench();
    carry(b, POWER_SWITCH);
    expect(plain(b.said())).toBe(
      'Power switch in the hand. PANEL, pins 6 and 8: power switch and ground. Fits. Nothing new would be found.',
    );
    expect(b.shown).toEqual(['panel']);
  });

  test.each(['document', 'route', 'diagnose', 'hand-over'] as const satisfies readonly Area[])(
    'goes from %s to the board, which alone has a hand, and is brought into sight there',
    (area) => {
      const b = bareBench();
      b.session.getState().goTo(area);
      b.session.getState().select({ kind: 'plug', plug: POWER_SWITCH });
      expect(runAction(b, 'edit.place')).toBe(true);
      expect(b.session.getState()).toMatchObject({
        area: 'wire',
        placing: { plug: POWER_SWITCH, by: 'carry' },
        sought: ['panel'],
      });
      expect(b.shown).toEqual([]);
      press(b, 'Enter');
      expect(seatOf(b.build(), POWER_SWITCH)).toMatchObject({ connector: 'panel' });
    },
  );

  test('says what would be found one pin further', () => {
    const b = bareBench();
    carry(b, POWER_SWITCH);
    press(b, 'ArrowLeft');
    expect(plain(b.said())).toContain('PANEL, pins 4 and 6');
    expect(b.said()).toContain('Would be found: ');
  });

  test('sits after Enter, as one step, and is out of the hand', () => {
    const b = bareBench();
    const steps = b.editor.getState().open?.history.past.length ?? 0;
    carry(b, POWER_SWITCH);
    press(b, 'ArrowLeft', 'ArrowRight', 'Enter');
    expect(seatOf(b.build(), POWER_SWITCH)).toMatchObject({ connector: 'panel', turn: 0 });
    expect(b.editor.getState().open?.history.past.length).toBe(steps + 1);
    expect(b.session.getState().placing).toBeNull();
    expect(plain(b.said())).toBe('Power switch seated on PANEL, pins 6 and 8.');
  });

  test('is put back by Escape, with no step at all', () => {
    const b = bareBench();
    const before = b.build();
    carry(b, POWER_SWITCH);
    press(b, 'ArrowLeft', 'Escape');
    expect(b.build()).toBe(before);
    expect(b.said()).toBe('Power switch put back.');
  });

  test('stays in the hand where it does not fit, and says who is in the way', () => {
    const b = bench();
    carry(b, POWER_SWITCH);
    press(b, 'ArrowLeft', 'Enter');
    expect(b.session.getState().placing).not.toBeNull();
    expect(plain(b.session.getState().message ?? '')).toMatch(/already sits on pins? 4/);
  });

  test('goes to the next connector by Page Down, which the canvas then shows', () => {
    const b = bareBench();
    carry(b, POWER_SWITCH);
    press(b, 'PageDown');
    expect(b.shown).toHaveLength(2);
    expect(b.session.getState().placing?.candidate?.connector).toBe(b.shown[1]);
  });

  test('turns by R and keeps the turn on the way', () => {
    const b = bareBench();
    carry(b, POWER_SWITCH);
    press(b, 'r', 'r', 'ArrowRight');
    expect(b.session.getState().placing).toMatchObject({ turn: 180, candidate: { turn: 180 } });
  });
});

describe('a plug dragged by the pointer', () => {
  test('that is let go over nothing is put back', () => {
    const b = bench();
    const before = b.build();
    drag(b, POWER_SWITCH);
    seatHand(b);
    expect(b.session.getState().placing).toBeNull();
    expect(b.build()).toBe(before);
  });

  test('that is let go where it does not fit is put back, and the reason is told', () => {
    const b = bench();
    drag(b, POWER_SWITCH);
    b.session.getState().aim({ ...POWER_SWITCH, connector: 'panel', at: [1, 0], turn: 0 });
    seatHand(b);
    expect(b.session.getState().placing).toBeNull();
    expect(b.session.getState().message).toContain('does not fit');
  });
});

test('a pin chosen in the list takes the first hole of the plug in the hand', () => {
  const b = bareBench();
  carry(b, POWER_SWITCH);
  seatOnPin(b, 'panel', [1, 2]);
  expect(seatOf(b.build(), POWER_SWITCH)).toMatchObject({ connector: 'panel', at: [1, 2] });
});

test('cancelling with an empty hand says nothing', () => {
  const b = bench();
  cancelHand(b);
  expect(b.said()).toBe('');
});

test('keys with Ctrl, Alt or Command are left to the menus', () => {
  const none: PlacingKey | undefined = placingKey({
    key: 'r',
    shiftKey: false,
    ctrlKey: true,
    metaKey: false,
    altKey: false,
  });
  expect(none).toBeUndefined();
});
