import { connectorOf } from '../../boards/document/lookup';
import { hasCables } from '../../boards/handover/cables/cable-list';
import { saveList } from '../files/save-list';
import type { Workbench } from '../workbench';
import type { Action } from './action';

/** What is taken to the bench, on paper or to another program. */
export function paperActions(workbench: Workbench): readonly Action[] {
  const build = workbench.editor.getState().open?.history.present;
  const { openDialog, selection } = workbench.session.getState();
  const paper = { menu: 'file', part: 2, enabled: build !== undefined } as const;
  const header =
    build && selection.kind === 'connector' ? connectorOf(build.board, selection.connector)?.id : undefined;
  return [
    {
      id: 'file.print-bench-sheet',
      ...paper,
      label: 'Print the bench sheet…',
      shortcuts: ['Mod+Shift+P'],
      run: () => openDialog({ kind: 'print-bench-sheet' }),
    },
    {
      id: 'file.print-pinout',
      ...paper,
      label: 'Print the pinout…',
      shortcuts: ['Mod+P'],
      run: () => openDialog({ kind: 'print-pinout' }),
    },
    {
      id: 'file.print-trouble',
      ...paper,
      label: 'Print the trouble sheet…',
      shortcuts: [],
      run: () => openDialog({ kind: 'print-trouble' }),
    },
    {
      id: 'file.print-labels',
      ...paper,
      label: 'Print the cable labels…',
      shortcuts: [],
      run: () => openDialog({ kind: 'print-labels' }),
    },
    {
      id: 'file.save-list',
      ...paper,
      label: 'Save the from-to list…',
      shortcuts: [],
      run: () => saveList(workbench, 'from-to'),
    },
    {
      id: 'file.save-cables',
      ...paper,
      label: 'Save the cable list…',
      shortcuts: [],
      enabled: build !== undefined && hasCables(build),
      run: () => saveList(workbench, 'cables'),
    },
    {
      id: 'file.header-picture',
      ...paper,
      label: 'Save a picture of this header…',
      shortcuts: [],
      enabled: header !== undefined,
      run: () => header !== undefined && openDialog({ kind: 'header-picture', connector: header }),
    },
  ];
}
