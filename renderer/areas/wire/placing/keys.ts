import type { KeyPress } from '../../../actions/shortcut';
import type { Direction } from './steps';

/** What a key does while a plug is in the hand. */
export type PlacingKey =
  | { readonly kind: 'step'; readonly direction: Direction }
  | { readonly kind: 'connector'; readonly by: 1 | -1 }
  | { readonly kind: 'turn'; readonly by: 1 | -1 }
  | { readonly kind: 'seat' }
  | { readonly kind: 'cancel' };

/** The meaning of a key press for a plug in the hand; undefined leaves the key to whoever wants it. */
export function placingKey(press: KeyPress): PlacingKey | undefined {
  if (press.ctrlKey || press.metaKey || press.altKey) return undefined;
  switch (press.key) {
    case 'ArrowLeft':
      return { kind: 'step', direction: 'left' };
    case 'ArrowRight':
      return { kind: 'step', direction: 'right' };
    case 'ArrowUp':
      return { kind: 'step', direction: 'up' };
    case 'ArrowDown':
      return { kind: 'step', direction: 'down' };
    case 'PageDown':
      return { kind: 'connector', by: 1 };
    case 'PageUp':
      return { kind: 'connector', by: -1 };
    case 'r':
    case 'R':
      return { kind: 'turn', by: press.shiftKey ? -1 : 1 };
    case 'Enter':
      return { kind: 'seat' };
    case 'Escape':
      return { kind: 'cancel' };
    default:
      return undefined;
  }
}
