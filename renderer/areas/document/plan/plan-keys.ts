import type { Mm } from '../../../../boards/base/units';

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

export interface PlanKeyPress {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}

const USUAL_MM: Mm = 0.5;
const LARGE_MM: Mm = 5;
const SMALL_MM: Mm = 0.1;

const ARROWS: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

export function isArrow(key: string): boolean {
  return ARROWS[key] !== undefined;
}

/** The meaning of a key press for the chosen connector; undefined leaves the key to whoever wants it. */
export function planKey(press: PlanKeyPress): PlanKey | undefined {
  const { key, shiftKey, altKey } = press;
  if (press.ctrlKey || press.metaKey) return altKey || shiftKey ? undefined : clipboardKey(key);
  const arrow = ARROWS[key];
  if (arrow) {
    const step = altKey ? SMALL_MM : shiftKey ? LARGE_MM : USUAL_MM;
    return { kind: 'nudge', xMm: arrow[0] * step, yMm: arrow[1] * step };
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
