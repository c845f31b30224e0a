import type { Mm } from '../../../../boards/base/units';
import type { KeyPress } from '../../../actions/shortcut';
import { arrowStep } from '../../../look/arrow-keys';

/** What a key does on the board plan. */
export type PlanKey =
  | { readonly kind: 'nudge'; readonly xMm: Mm; readonly yMm: Mm }
  | { readonly kind: 'turn'; readonly by: 90 | 270 }
  | { readonly kind: 'walk'; readonly by: 1 | -1 }
  | { readonly kind: 'open' }
  | { readonly kind: 'remove' }
  | { readonly kind: 'copy' }
  | { readonly kind: 'paste' }
  | { readonly kind: 'cancel' };

const USUAL_MM: Mm = 0.5;
const LARGE_MM: Mm = 5;
const SMALL_MM: Mm = 0.1;

/** The meaning of a key press for the chosen connector; undefined leaves the key to whoever wants it. */
export function planKey(press: KeyPress): PlanKey | undefined {
  const { key, shiftKey, altKey } = press;
  if (press.ctrlKey || press.metaKey) return altKey || shiftKey ? undefined : clipboardKey(key);
  const arrow = arrowStep(key);
  if (arrow) {
    const step = altKey ? SMALL_MM : shiftKey ? LARGE_MM : USUAL_MM;
    return { kind: 'nudge', xMm: arrow.x * step, yMm: arrow.y * step };
  }
  if (altKey) return undefined;
  switch (key) {
    case 'r':
    case 'R':
      return { kind: 'turn', by: shiftKey ? 270 : 90 };
    case 'Tab':
      return { kind: 'walk', by: shiftKey ? -1 : 1 };
    case 'Enter':
      return { kind: 'open' };
    case 'Delete':
    case 'Backspace':
      return { kind: 'remove' };
    case 'Escape':
      return { kind: 'cancel' };
    default:
      return undefined;
  }
}

function clipboardKey(key: string): PlanKey | undefined {
  if (key.toLowerCase() === 'c') return { kind: 'copy' };
  return key.toLowerCase() === 'v' ? { kind: 'paste' } : undefined;
}
