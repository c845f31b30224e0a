import { anyConnectorOf, unitWith } from '../../boards/document/lookup';
import type { Dialog } from '../store/dialog';
import type { Workbench } from '../workbench';
import type { Action } from './action';

const board = (part: number) => ({ menu: 'board', part }) as const;

/** Ways of setting down a board. Those that fill a connector need one to be chosen. */
export function documentActions(workbench: Workbench): readonly Action[] {
  return [...fillingActions(workbench)];
}

/** Ways of filling the chosen connector, each a dialog of its own. The connector's page shows them in this order. */
function fillingActions(workbench: Workbench): readonly Action[] {
  const { openDialog } = workbench.session.getState();
  const connector = chosenConnector(workbench);
  const way = (dialogOf: (connector: string) => Dialog) => ({
    ...board(0),
    enabled: connector !== undefined,
    run: () => connector !== undefined && openDialog(dialogOf(connector)),
  });
  return [
    {
      id: 'board.pin-list',
      label: 'Paste a pin list…',
      shortcuts: ['Mod+Shift+L'],
      ...way((id) => ({ kind: 'pin-list', connector: id })),
    },
    {
      id: 'board.looks-like',
      label: 'Looks like…',
      shortcuts: ['Mod+Shift+K'],
      ...way((id) => ({ kind: 'looks-like', connector: id })),
    },
    {
      id: 'board.photo',
      label: 'From a photo…',
      shortcuts: [],
      ...way((id) => ({ kind: 'photo', connector: id })),
      // The photo is one of the board.
      enabled: connector !== undefined && !isOfUnit(workbench, connector),
    },
    {
      id: 'board.meter',
      label: 'From a meter…',
      shortcuts: ['Mod+Shift+M'],
      ...way((id) => ({ kind: 'meter', connector: id })),
    },
  ];
}

function isOfUnit({ editor }: Workbench, connector: string): boolean {
  const build = editor.getState().open?.history.present;
  return build !== undefined && unitWith(build, connector) !== undefined;
}

/** The id of the connector that is chosen, also by one of its pins. */
function chosenConnector({ editor, session }: Workbench): string | undefined {
  const build = editor.getState().open?.history.present;
  const { selection } = session.getState();
  if (build === undefined || selection.kind !== 'connector') return undefined;
  return anyConnectorOf(build, selection.connector)?.id;
}
