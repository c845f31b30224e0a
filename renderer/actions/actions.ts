import { useMemo } from 'react';
import { useEditor, useSession, useWorkbench, type Workbench } from '../workbench';
import type { Action } from './action';
import { documentActions } from './document-actions';
import { editActions } from './edit-actions';
import { fileActions } from './file-actions';
import { finishTyping } from './finish-typing';
import { libraryActions } from './library-actions';
import { paperActions } from './paper-actions';
import { planActions } from './plan-actions';
import { seatingActions } from './seating-actions';
import { trayActions } from './tray-actions';
import { viewActions } from './view-actions';

function helpActions({ session }: Workbench): readonly Action[] {
  const { openDialog } = session.getState();
  const help = { menu: 'help', part: 0, enabled: true } as const;
  return [
    {
      id: 'help.keys',
      ...help,
      label: 'Keys…',
      shortcuts: ['F1', 'Mod+/'],
      run: () => openDialog({ kind: 'keys' }),
    },
    {
      id: 'help.cautions',
      ...help,
      label: 'Before you touch a pin…',
      shortcuts: [],
      run: () => openDialog({ kind: 'cautions' }),
    },
  ];
}

/** Everything that can be done now. The only list: menus, keys, search and toolbars read it. */
export function actionsOf(workbench: Workbench): readonly Action[] {
  return [
    ...fileActions(workbench),
    ...paperActions(workbench),
    ...editActions(workbench),
    ...viewActions(workbench),
    ...documentActions(workbench),
    ...planActions(workbench),
    ...libraryActions(workbench),
    ...seatingActions(workbench),
    ...trayActions(workbench),
    ...helpActions(workbench),
  ];
}

/**
 * Does what an action says, where it may be done now, after what is being typed was taken. False: there is no such
 * action, or not now.
 */
export function runAction(workbench: Workbench, id: string): boolean {
  finishTyping();
  const action = actionsOf(workbench).find((each) => each.id === id);
  if (!action?.enabled) return false;
  action.run();
  return true;
}

/** The list as it is now; the view is drawn again when it may have changed. */
export function useActions(): readonly Action[] {
  const workbench = useWorkbench();
  const open = useEditor((editor) => editor.open);
  const copied = useSession((session) => session.copied);
  const session = useSession(
    ({ selection, area, page, settings }) =>
      `${JSON.stringify(selection)} ${area} ${page} ${JSON.stringify(settings)}`,
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: they read the stores themselves; these say when they may differ
  return useMemo(() => actionsOf(workbench), [workbench, open, session, copied]);
}

/** One action by its id. An id that no list has is a bug. */
export function useAction(id: string): Action {
  const action = useActions().find((each) => each.id === id);
  if (action === undefined) throw new Error(`No action ${id}`);
  return action;
}
