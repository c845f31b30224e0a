import { leadOf, seatOf } from '../../boards/document/lookup';
import { redoLabel, undoLabel } from '../../boards/edit/history';
import { carry } from '../areas/wire/placing/hand';
import { doCommand } from '../do-command';
import { chosenPlug } from '../store/session';
import type { Workbench } from '../workbench';
import type { Action } from './action';

const edit = (part: number) => ({ menu: 'edit', part }) as const;

export function editActions(workbench: Workbench): readonly Action[] {
  const { open, undo, redo } = workbench.editor.getState();
  const undone = open ? undoLabel(open.history) : undefined;
  const redone = open ? redoLabel(open.history) : undefined;
  return [
    {
      id: 'edit.undo',
      ...edit(0),
      label: undone === undefined ? 'Undo' : `Undo ${undone}`,
      shortcuts: ['Mod+Z'],
      enabled: undone !== undefined,
      run: () => step(workbench, undo, `Undone: ${undone}.`),
    },
    {
      id: 'edit.redo',
      ...edit(0),
      label: redone === undefined ? 'Redo' : `Redo ${redone}`,
      shortcuts: ['Mod+Y', 'Mod+Shift+Z'],
      enabled: redone !== undefined,
      run: () => step(workbench, redo, `Done again: ${redone}.`),
    },
    ...plugActions(workbench),
    {
      id: 'edit.unseat-all',
      ...edit(2),
      label: 'Take off all leads',
      shortcuts: [],
      enabled: (open?.history.present.seats.length ?? 0) > 0,
      run: () => doCommand(workbench, { name: 'unseat-all', args: {} }),
    },
    {
      id: 'edit.search',
      ...edit(3),
      label: 'Search everything…',
      shortcuts: ['Mod+K', 'Mod+F'],
      enabled: true,
      run: () => workbench.session.getState().openDialog({ kind: 'search' }),
    },
  ];
}

function step({ session }: Workbench, change: () => void, words: string): void {
  session.getState().letGo();
  change();
  session.getState().tell(words);
}

/** What can be done with the chosen plug. */
function plugActions(workbench: Workbench): readonly Action[] {
  const { selection, openDialog } = workbench.session.getState();
  const build = workbench.editor.getState().open?.history.present;
  const plug = chosenPlug(selection);
  const lead = build && plug && leadOf(build, plug.lead);
  const seated = build !== undefined && plug !== undefined && seatOf(build, plug) !== undefined;
  const named = lead?.name ?? 'the chosen lead';
  const aside = lead?.setAside === true;
  const withPlug = (run: (chosen: NonNullable<typeof plug>) => unknown) => () => plug && run(plug);
  return [
    {
      id: 'edit.place',
      ...edit(1),
      label: `${seated ? 'Move' : 'Place'} ${named}`,
      shortcuts: ['Mod+Enter'],
      enabled: lead !== undefined,
      run: withPlug((chosen) => carry(workbench, chosen)),
    },
    {
      id: 'edit.places',
      ...edit(1),
      label: `Places for ${named}…`,
      shortcuts: ['Mod+L'],
      enabled: lead !== undefined,
      run: withPlug((chosen) => openDialog({ kind: 'places', plug: chosen })),
    },
    {
      id: 'edit.turn',
      ...edit(1),
      label: `Turn ${named}`,
      shortcuts: ['Mod+]'],
      enabled: seated,
      run: withPlug((chosen) => doCommand(workbench, { name: 'turn-plug', args: { ...chosen, by: 90 } })),
    },
    {
      id: 'edit.turn-round',
      ...edit(1),
      label: `Turn ${named} round`,
      shortcuts: ['Mod+['],
      enabled: seated,
      run: withPlug((chosen) => doCommand(workbench, { name: 'turn-plug', args: { ...chosen, by: 180 } })),
    },
    {
      id: 'edit.unseat',
      ...edit(1),
      label: `Take off ${named}`,
      shortcuts: ['Delete'],
      enabled: seated,
      run: withPlug((chosen) => doCommand(workbench, { name: 'unseat-plug', args: chosen })),
    },
    {
      id: 'edit.set-aside',
      ...edit(1),
      label: aside ? `Put ${named} back on the shelf` : `Set ${named} aside`,
      shortcuts: [],
      enabled: lead !== undefined && !seated,
      run: withPlug(({ lead: id }) =>
        doCommand(workbench, { name: 'set-lead-aside', args: { lead: id, aside: !aside } }),
      ),
    },
  ];
}
