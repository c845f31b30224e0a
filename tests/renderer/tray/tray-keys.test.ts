import { expect, it } from 'vitest';
import { TOOL_KEYS, trayKey } from '../../../renderer/areas/route/tray/tray-keys';

const PLAIN = { shiftKey: false, ctrlKey: false, metaKey: false, altKey: false };

it('Arrows move by a millimetre, with Shift by ten, with Alt they make larger', () => {
  expect(trayKey({ ...PLAIN, key: 'ArrowLeft' })).toEqual({ kind: 'nudge', x: -1, y: 0 });
  expect(trayKey({ ...PLAIN, key: 'ArrowDown', shiftKey: true })).toEqual({ kind: 'nudge', x: 0, y: 10 });
  expect(trayKey({ ...PLAIN, key: 'ArrowRight', altKey: true })).toEqual({ kind: 'grow', x: 1, y: 0 });
});

it('Every tool has a letter of its own, small or capital, and none that means something else', () => {
  for (const [tool, key] of Object.entries(TOOL_KEYS))
    for (const letter of [key, key.toLowerCase()])
      expect(trayKey({ ...PLAIN, key: letter })).toEqual({ kind: 'tool', tool });
  expect(new Set(Object.values(TOOL_KEYS)).size).toBe(Object.keys(TOOL_KEYS).length);
  expect(trayKey({ ...PLAIN, key: 'm' })).toEqual({ kind: 'other-side' });
  expect(trayKey({ ...PLAIN, key: 'r' })).toEqual({ kind: 'turn' });
});

it('Keys with Ctrl or Command belong to the window', () => {
  for (const key of ['z', 's', 'ArrowLeft', 'Delete'])
    for (const held of ['ctrlKey', 'metaKey'])
      expect(trayKey({ ...PLAIN, [held]: true, key })).toBeUndefined();
});
