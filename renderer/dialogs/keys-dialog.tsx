import { useState } from 'react';
import { useActions } from '../actions/actions';
import { shortcutWords } from '../actions/shortcut';
import { isMac } from '../actions/use-keys';
import { SearchBox } from '../look/search-box';
import { Window } from '../look/window';
import { useWorkbench } from '../workbench';
import { matches } from './matching';

/** What the keys do while a plug is in the hand. */
const HAND_KEYS: readonly (readonly [keys: string, label: string])[] = [
  ['Arrow keys', 'Plug in the hand: one cell further, past the edge to the next connector'],
  ['Page Up, Page Down', 'Plug in the hand: connector before, next connector'],
  ['R, Shift+R', 'Plug in the hand: turn right, turn left'],
  ['Enter', 'Plug in the hand: seat it; in the list of leads: take it into the hand'],
  ['Escape', 'Plug in the hand: put it back'],
  ['Tab, Shift+Tab', 'Board plan: next connector, connector before'],
  ['Arrow keys', 'Board plan: move the chosen connector by half a millimetre'],
  ['Shift+arrow keys, Alt+arrow keys', 'Board plan: move it by 5 mm, by 0.1 mm'],
  ['R, Shift+R', 'Board plan: turn the chosen connector right, turn it left'],
  ['Delete', 'Board plan: remove the chosen connector'],
  ['Ctrl+C, Ctrl+V', 'Board plan: copy the chosen connector, paste it on this board or another'],
  ['Enter', 'Board plan: open the pins of the chosen connector'],
  ['Escape', 'Board plan: take a move back, choose nothing'],
  ['Space and drag, middle button', 'Canvas: move the view'],
  ['Ctrl and wheel, pinch', 'Canvas: zoom at the pointer'],
];

/** Every key there is, searchable. */
export function KeysDialog({ onClose }: { readonly onClose: () => void }) {
  const [typed, setTyped] = useState('');
  const mac = isMac(useWorkbench());
  const actions = useActions();
  const rows = [
    ...actions.flatMap(({ shortcuts, label }) =>
      shortcuts.map((shortcut) => [shortcutWords(shortcut, mac), label] as const),
    ),
    ...HAND_KEYS,
  ].filter(([keys, label]) => matches(`${keys} ${label}`, typed));
  return (
    <Window title="Keys" onClose={onClose}>
      <SearchBox
        label="Search keys"
        placeholder="Key or what it does"
        value={typed}
        onChange={setTyped}
        autoFocus
      />
      <table className="keys-table">
        <thead>
          <tr>
            <th scope="col">Keys</th>
            <th scope="col">What they do</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([keys, label]) => (
            <tr key={`${keys} ${label}`}>
              <td>
                <kbd className="keys">{keys}</kbd>
              </td>
              <td>{label}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Window>
  );
}
