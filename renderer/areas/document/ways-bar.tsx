import { Toolbar } from 'react-aria-components/Toolbar';
import { useActions } from '../../actions/actions';
import { shortcutWords } from '../../actions/shortcut';
import { isMac } from '../../actions/use-keys';
import { Button } from '../../look/button';
import { useWorkbench } from '../../workbench';

/** Ways of filling the chosen connector other than pin by pin, by the ids of their actions. */
const WAYS: readonly string[] = ['board.pin-list', 'board.photo', 'board.meter', 'board.looks-like'];

/** A row of buttons, one for each way; what it does is the action's. */
export function WaysBar() {
  const actions = useActions();
  const mac = isMac(useWorkbench());
  return (
    <Toolbar className="ways-bar" aria-label="Fill the pins">
      {WAYS.flatMap((way) => actions.find(({ id }) => id === way) ?? []).map((action) => (
        <Button key={action.id} disabled={!action.enabled} onPress={() => void action.run()}>
          {action.label}
          {action.shortcuts.slice(0, 1).map((keys) => (
            <kbd key={keys} className="keys">
              {shortcutWords(keys, mac)}
            </kbd>
          ))}
        </Button>
      ))}
    </Toolbar>
  );
}
