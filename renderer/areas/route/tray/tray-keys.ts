import type { Mm } from '../../../../boards/base/units';
import type { KeyPress } from '../../../actions/shortcut';
import { arrowStep } from '../../../look/arrow-keys';
import { TRAY_TOOLS, type TrayTool } from '../../../store/session';

/** What a key does on the map; directions are those of the screen. */
export type TrayKey =
  | { readonly kind: 'nudge'; readonly x: Mm; readonly y: Mm }
  | { readonly kind: 'grow'; readonly x: Mm; readonly y: Mm }
  | { readonly kind: 'tool'; readonly tool: TrayTool }
  | { readonly kind: 'walk'; readonly by: 1 | -1 }
  | { readonly kind: 'other-side' | 'turn' | 'put' | 'remove' | 'cancel' };

const USUAL_MM: Mm = 1;
const LARGE_MM: Mm = 10;

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

/** The meaning of a key press on the map; undefined leaves the key to whoever wants it. */
export function trayKey({ key, shiftKey, ctrlKey, metaKey, altKey }: KeyPress): TrayKey | undefined {
  if (ctrlKey || metaKey) return undefined;
  const arrow = arrowStep(key);
  if (arrow) {
    const step = shiftKey ? LARGE_MM : USUAL_MM;
    return { kind: altKey ? 'grow' : 'nudge', x: arrow.x * step, y: arrow.y * step };
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
