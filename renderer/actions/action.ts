import type { Shortcut } from './shortcut';

export const MENUS = ['file', 'edit', 'view', 'board', 'tray', 'help'] as const;
export type MenuName = (typeof MENUS)[number];

/** Something a person can do, as menus, keys, the search and toolbars all know it. */
export interface Action {
  /** Agreed with the machine's own menu, which sends it. */
  readonly id: string;
  readonly menu: MenuName;
  /** Parts of a menu are set off by lines. */
  readonly part: number;
  readonly label: string;
  readonly shortcuts: readonly Shortcut[];
  readonly enabled: boolean;
  /** For actions that are a choice among several. */
  readonly chosen?: boolean;
  readonly run: () => unknown;
}
