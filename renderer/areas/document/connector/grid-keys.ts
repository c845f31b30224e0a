import type { HeaderLayout } from './header-layout';
import {
  type Direction,
  endOf,
  everything,
  extendedTo,
  focused,
  only,
  type PinSelection,
  stepFrom,
  toggled,
} from './selection';

export interface GridKey {
  readonly key: string;
  readonly shiftKey: boolean;
  /** Ctrl, or Command on a Mac. */
  readonly mod: boolean;
}

const ARROWS: Readonly<Record<string, Direction>> = {
  ArrowUp: 'up',
  ArrowDown: 'down',
  ArrowLeft: 'left',
  ArrowRight: 'right',
};

/** What is chosen after a key; undefined where the key is not about choosing. */
export function afterKey(layout: HeaderLayout, now: PinSelection, press: GridKey): PinSelection | undefined {
  const { key, mod, shiftKey } = press;
  if (key === ' ') return mod || !now.chosen.has(now.focus) ? toggled(now, now.focus) : only(now.focus);
  if (key === 'Escape') return only(now.focus);
  if (mod && key.toLowerCase() === 'a') return everything(layout, now);
  const to = goal(layout, now.focus, press);
  if (to === undefined) return undefined;
  if (shiftKey) return extendedTo(layout, now, to);
  return mod && key in ARROWS ? focused(now, to) : only(to);
}

function goal(layout: HeaderLayout, label: string, { key, mod }: GridKey): string | undefined {
  const direction = ARROWS[key];
  if (direction) return stepFrom(layout, label, direction);
  if (key === 'Home') return endOf(layout, label, 'first', mod);
  return key === 'End' ? endOf(layout, label, 'last', mod) : undefined;
}
