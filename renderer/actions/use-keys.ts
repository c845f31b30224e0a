import { useEffect } from 'react';
import { useWorkbench, type Workbench } from '../workbench';
import type { Action } from './action';
import { actionsOf, runAction } from './actions';
import { isPressed } from './shortcut';

/** Shortcuts that a text field has its own use for. */
const OF_TEXT = new Set(['edit.undo', 'edit.redo', 'edit.unseat', 'view.turn']);

/** Keys that only mean something where leads are: not while a dialog or a menu is open, or text is typed. */
const BARE = /^[A-Z][a-z]+$/;

export function isMac({ about }: Pick<Workbench, 'about'>): boolean {
  return about.platform === 'darwin';
}

/** Runs actions by their keys, wherever the focus is. */
export function useKeys(): void {
  const workbench = useWorkbench();
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const action = pressed(workbench, event);
      if (action === undefined || !mayRun(workbench, action, event.target)) return;
      // A bare key whose action can do nothing now belongs to whoever has the focus.
      if (!action.enabled && isBare(action)) return;
      event.preventDefault();
      event.stopPropagation();
      runAction(workbench, action.id);
    };
    window.addEventListener('keydown', onKey, { capture: true });
    return () => window.removeEventListener('keydown', onKey, { capture: true });
  }, [workbench]);
}

function pressed(workbench: Workbench, event: KeyboardEvent): Action | undefined {
  const mac = isMac(workbench);
  return actionsOf(workbench).find((action) => action.shortcuts.some((each) => isPressed(each, event, mac)));
}

function isBare({ shortcuts }: Action): boolean {
  return shortcuts.some((shortcut) => BARE.test(shortcut));
}

function mayRun(workbench: Workbench, action: Action, target: EventTarget | null): boolean {
  if (workbench.session.getState().dialogs.length > 0) return false;
  const element = target instanceof Element ? target : null;
  if (element?.closest('[role="menu"], [role="dialog"], [role="listbox"]')) return !isBare(action);
  if (element && ownKeys(element).some((key) => action.shortcuts.includes(key))) return false;
  const typing = element?.closest('input, textarea, [contenteditable="true"]') !== null && element !== null;
  return !(typing && OF_TEXT.has(action.id));
}

/** Shortcuts that a part of the page keeps for itself while the focus is in it. */
function ownKeys(element: Element): readonly string[] {
  const owner = element.closest('[data-own-keys]');
  return owner?.getAttribute('data-own-keys')?.split(' ') ?? [];
}
