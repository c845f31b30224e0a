import type { Mm } from '../../../../boards/base/units';
import { TRAY_TOOLS, type TrayTool } from '../../../store/session';

/** What a key does on the map; directions are those of the screen. */
export type TrayKey =
  | { readonly kind: 'nudge'; readonly x: Mm; readonly y: Mm }
  | { readonly kind: 'grow'; readonly x: Mm; readonly y: Mm }
  | { readonly kind: 'tool'; readonly tool: TrayTool }
  | { readonly kind: 'walk'; readonly by: 1 | -1 }
  | { readonly kind: 'other-side' | 'turn' | 'put' | 'remove' | 'cancel' };

export interface TrayKeyPress {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}

const USUAL_MM: Mm = 1;
const LARGE_MM: Mm = 10;

const ARROWS: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The key of each tool, as its button and the list of keys tell it. */
export const TOOL_KEYS: Readonly<Record<TrayTool, string>> = {
  choose: 'V',
  tie: 'T',
  bend: 'B',
  end: 'E',
  opening: 'O',
  bay: 'D',
  supply: 'S',
  standoff: 'N',
  fan: 'F',
  path: 'P',
};

export const OTHER_SIDE_KEY = 'M';

const TOOLS: ReadonlyMap<string, TrayTool> = new Map(TRAY_TOOLS.map((tool) => [TOOL_KEYS[tool], tool]));

export function isArrow(key: string): boolean {
  return ARROWS[key] !== undefined;
}

/** The meaning of a key press on the map; undefined leaves the key to whoever wants it. */
export function trayKey({ key, shiftKey, ctrlKey, metaKey, altKey }: TrayKeyPress): TrayKey | undefined {
  if (ctrlKey || metaKey) return undefined;
  const arrow = ARROWS[key];
  if (arrow) {
    const step = shiftKey ? LARGE_MM : USUAL_MM;
    return { kind: altKey ? 'grow' : 'nudge', x: arrow[0] * step, y: arrow[1] * step };
  }
  if (altKey) return undefined;
  const letter = key.length === 1 ? key.toUpperCase() : key;
  const tool = TOOLS.get(letter);
  if (tool !== undefined) return { kind: 'tool', tool };
  switch (letter) {
    case OTHER_SIDE_KEY:
      return { kind: 'other-side' };
    case 'R':
      return { kind: 'turn' };
    case 'Tab':
      return { kind: 'walk', by: shiftKey ? -1 : 1 };
    case 'Enter':
      return { kind: 'put' };
    case 'Delete':
    case 'Backspace':
      return { kind: 'remove' };
    case 'Escape':
      return { kind: 'cancel' };
    default:
      return undefined;
  }
}
