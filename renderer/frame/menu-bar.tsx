import { Check } from 'lucide-react';
import { Button } from 'react-aria-components/Button';
import { Collection } from 'react-aria-components/Collection';
import { Menu, MenuItem, MenuSection, MenuTrigger } from 'react-aria-components/Menu';
import { Popover } from 'react-aria-components/Popover';
import { Separator } from 'react-aria-components/Separator';
import { Toolbar } from 'react-aria-components/Toolbar';
import { type Action, MENUS, type MenuName } from '../actions/action';
import { useActions } from '../actions/actions';
import { shortcutWords } from '../actions/shortcut';
import { isMac } from '../actions/use-keys';
import { useWorkbench } from '../workbench';

const TITLES: Readonly<Record<MenuName, string>> = {
  file: 'File',
  edit: 'Edit',
  view: 'View',
  board: 'Board',
  tray: 'Tray',
  help: 'Help',
};

/** Every action, in the usual order. Only where the system draws no menu of its own. */
export function MenuBar() {
  const actions = useActions();
  return (
    <Toolbar className="menu-bar" aria-label="Menus">
      {MENUS.map((menu) => (
        <OneMenu key={menu} title={TITLES[menu]} actions={actions.filter((action) => action.menu === menu)} />
      ))}
    </Toolbar>
  );
}

function OneMenu({ title, actions }: { readonly title: string; readonly actions: readonly Action[] }) {
  const parts = [...new Set(actions.map((action) => action.part))];
  return (
    <MenuTrigger>
      <Button className="button button-quiet menu-button">{title}</Button>
      <Popover className="popover" placement="bottom start" offset={2}>
        <Menu
          className="menu"
          disabledKeys={actions.filter((action) => !action.enabled).map((action) => action.id)}
          onAction={(key) => actions.find((action) => action.id === key)?.run()}
        >
          {parts.map((part, place) => (
            <MenuSection key={part} aria-label={`${title}, part ${place + 1}`}>
              {place > 0 && <Separator className="menu-line" />}
              <Collection items={actions.filter((action) => action.part === part)} dependencies={[actions]}>
                {(action) => <Item action={action} />}
              </Collection>
            </MenuSection>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}

function Item({ action }: { readonly action: Action }) {
  const mac = isMac(useWorkbench());
  const [shortcut] = action.shortcuts;
  return (
    <MenuItem id={action.id} textValue={action.label} className="option">
      <span>
        {action.label}
        {action.chosen && <span className="aside-hidden">, chosen</span>}
      </span>
      {action.chosen && <Check className="option-mark" size={16} aria-hidden="true" />}
      {shortcut !== undefined && <kbd className="keys">{shortcutWords(shortcut, mac)}</kbd>}
    </MenuItem>
  );
}
