import { Undo2 } from 'lucide-react';
import { useEffect, useEffectEvent } from 'react';
import { useAction } from '../../actions/actions';
import { isPressed } from '../../actions/shortcut';
import { isMac } from '../../actions/use-keys';
import { Button } from '../../look/button';
import { useWorkbench } from '../../workbench';

/** The one step back, where a dialog covers the window's own. */
export function UndoButton() {
  const undo = useAction('edit.undo');
  return (
    <Button kind="quiet" disabled={!undo.enabled} onPress={() => void undo.run()}>
      <Undo2 size={16} aria-hidden="true" />
      {undo.label}
    </Button>
  );
}

/**
 * The keys of undo and redo, which the window leaves alone while a dialog is open; not while text is typed.
 *
 * @param isTyped whether what stands in a line of text is being typed, and its own undo counts
 */
export function useUndoKeys(isTyped: (line: HTMLInputElement) => boolean = () => true): void {
  const mac = isMac(useWorkbench());
  const actions = [useAction('edit.undo'), useAction('edit.redo')];
  const onKey = useEffectEvent((event: KeyboardEvent) => {
    const { target } = event;
    if (target instanceof HTMLInputElement && target.type === 'text' && isTyped(target)) return;
    const action = actions.find(({ shortcuts }) => shortcuts.some((each) => isPressed(each, event, mac)));
    if (!action?.enabled) return;
    event.preventDefault();
    action.run();
  });
  useEffect(() => {
    const listen = (event: KeyboardEvent) => onKey(event);
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, []);
}
