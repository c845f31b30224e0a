import { Menu, type MenuItemConstructorOptions } from 'electron';
import { MENU_BAR, type MenuItem } from './menu-list';

/** Puts up the menu bar; a chosen action is sent to the page, which has the one list of what they do. */
export function putUpMenu(choose: (id: string) => void): void {
  const bar = MENU_BAR.map(({ label, items }) => ({
    label,
    submenu: items.map((item) => options(item, choose)),
  }));
  Menu.setApplicationMenu(Menu.buildFromTemplate(bar));
}

function options(item: MenuItem, choose: (id: string) => void): MenuItemConstructorOptions {
  if (item === 'line') return { type: 'separator' };
  if ('role' in item) return { role: item.role };
  return {
    label: item.label,
    click: () => choose(item.id),
    ...(item.accelerator && { accelerator: item.accelerator }),
    // Shown here and listened for by the page: it knows whether a key belongs to a text field.
    registerAccelerator: false,
  };
}
