import { describe, expect, test } from 'vitest';
import { isPressed, type KeyPress, shortcutWords } from '../../../renderer/actions/shortcut';

function press(key: string, ...mods: readonly ('ctrl' | 'meta' | 'shift' | 'alt')[]): KeyPress {
  return {
    key,
    ctrlKey: mods.includes('ctrl'),
    metaKey: mods.includes('meta'),
    shiftKey: mods.includes('shift'),
    altKey: mods.includes('alt'),
  };
}

describe('a shortcut', () => {
  test('means Ctrl on a PC and Command on a Mac', () => {
    expect(isPressed('Mod+S', press('s', 'ctrl'), false)).toBe(true);
    expect(isPressed('Mod+S', press('s', 'meta'), false)).toBe(false);
    expect(isPressed('Mod+S', press('s', 'meta'), true)).toBe(true);
    expect(isPressed('Mod+S', press('s', 'ctrl'), true)).toBe(false);
  });

  test('with Shift is another than without', () => {
    expect(isPressed('Mod+Shift+Z', press('Z', 'ctrl', 'shift'), false)).toBe(true);
    expect(isPressed('Mod+Z', press('Z', 'ctrl', 'shift'), false)).toBe(false);
    expect(isPressed('Mod+Shift+Z', press('z', 'ctrl'), false)).toBe(false);
  });

  test('with a sign works on keyboards where the sign needs Shift', () => {
    expect(isPressed('Mod+Plus', press('+', 'ctrl', 'shift'), false)).toBe(true);
    expect(isPressed('Mod+Plus', press('+', 'ctrl'), false)).toBe(true);
    expect(isPressed('Mod+/', press('/', 'ctrl', 'shift'), false)).toBe(true);
  });

  test('without a modifier does not fire with one', () => {
    expect(isPressed('Delete', press('Delete'), false)).toBe(true);
    expect(isPressed('Delete', press('Delete', 'ctrl'), false)).toBe(false);
    expect(isPressed('F1', press('F1', 'shift'), false)).toBe(false);
  });

  test('is written as each platform writes it', () => {
    expect(shortcutWords('Mod+Shift+S', false)).toBe('Ctrl+Shift+S');
    expect(shortcutWords('Mod+Shift+S', true)).toBe('⇧⌘S');
    expect(shortcutWords('Mod+Minus', false)).toBe('Ctrl+−');
    expect(shortcutWords('Delete', true)).toBe('Delete');
  });
});
