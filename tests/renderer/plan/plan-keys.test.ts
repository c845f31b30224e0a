import { expect, test } from 'vitest';
import type { KeyPress } from '../../../renderer/actions/shortcut';
import { planKey } from '../../../renderer/areas/document/plan/plan-keys';

function press(key: string, held: Partial<KeyPress> = {}) {
  return planKey({ key, shiftKey: false, ctrlKey: false, metaKey: false, altKey: false, ...held });
}

test('an arrow moves by half a millimetre, with Shift by five, with Alt by a tenth', () => {
  expect(press('ArrowRight')).toEqual({ kind: 'nudge', xMm: 0.5, yMm: 0 });
  expect(press('ArrowUp', { shiftKey: true })).toEqual({ kind: 'nudge', xMm: 0, yMm: -5 });
  expect(press('ArrowDown', { altKey: true })).toEqual({ kind: 'nudge', xMm: 0, yMm: 0.1 });
});

test('R turns to the right, with Shift to the left; with Ctrl or Alt it is left to the browser', () => {
  expect(press('r')).toEqual({ kind: 'turn', by: 90 });
  expect(press('R', { shiftKey: true })).toEqual({ kind: 'turn', by: 270 });
  expect(press('r', { ctrlKey: true })).toBeUndefined();
  expect(press('r', { altKey: true })).toBeUndefined();
});

test('Ctrl or Command with C and V copies and pastes; with other keys it means nothing here', () => {
  expect(press('c', { ctrlKey: true })).toEqual({ kind: 'copy' });
  expect(press('v', { metaKey: true })).toEqual({ kind: 'paste' });
  expect(press('ArrowLeft', { ctrlKey: true })).toBeUndefined();
  expect(press('c', { ctrlKey: true, shiftKey: true })).toBeUndefined();
});

test('letters without a meaning are left alone', () => {
  for (const key of ['a', 'F5', ' ', 'PageDown']) expect(press(key)).toBeUndefined();
});
