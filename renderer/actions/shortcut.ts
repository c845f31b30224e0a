/** A key with its modifiers: "Mod+Shift+S"; Mod is Command on a Mac and Ctrl elsewhere. */
export type Shortcut = string;

export interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

const NAMES: Readonly<Record<string, string>> = { Plus: '+', Minus: '−', Delete: 'Delete' };
const MAC_SIGNS: Readonly<Record<string, string>> = { Mod: '⌘', Shift: '⇧', Alt: '⌥' };

function keyOf(shortcut: Shortcut): { readonly key: string; readonly mods: ReadonlySet<string> } {
  const parts = shortcut.split('+');
  return { key: parts.at(-1) ?? '', mods: new Set(parts.slice(0, -1)) };
}

/** Whether a key press is that shortcut. Signs reached with Shift on some keyboards match either way. */
export function isPressed(shortcut: Shortcut, press: KeyPress, mac: boolean): boolean {
  const { key, mods } = keyOf(shortcut);
  const mod = mac ? press.metaKey : press.ctrlKey;
  const foreign = mac ? press.ctrlKey : press.metaKey;
  if (mod !== mods.has('Mod') || foreign || press.altKey !== mods.has('Alt')) return false;
  const wanted = key === 'Plus' ? '+' : key === 'Minus' ? '-' : key.toLowerCase();
  if (press.key.toLowerCase() !== wanted) return false;
  return /^[a-z0-9]$|^\w{2,}$/.test(wanted) ? press.shiftKey === mods.has('Shift') : true;
}

/** As it is written in menus: "Ctrl+Shift+S", "⇧⌘S". */
export function shortcutWords(shortcut: Shortcut, mac: boolean): string {
  const { key, mods } = keyOf(shortcut);
  const name = NAMES[key] ?? key;
  const order = ['Alt', 'Shift', 'Mod'].filter((mod) => mods.has(mod));
  if (mac) return order.map((mod) => MAC_SIGNS[mod]).join('') + name;
  return [...order.toReversed().map((mod) => (mod === 'Mod' ? 'Ctrl' : mod)), name].join('+');
}
