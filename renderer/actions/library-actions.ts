import { askSheet } from '../store/ask';
import type { Workbench } from '../workbench';
import type { Action } from './action';

/** The library of sheets, and the open build's sheets in it. */
export function libraryActions(workbench: Workbench): readonly Action[] {
  const build = workbench.editor.getState().open?.history.present;
  const { openDialog } = workbench.session.getState();
  const enabled = build !== undefined;
  const sheets = { menu: 'board', part: 9, enabled, shortcuts: [] } as const;
  return [
    {
      id: 'file.library',
      menu: 'file',
      part: 0,
      label: 'Library of sheets…',
      shortcuts: ['Mod+Shift+O'],
      enabled: true,
      run: () => openDialog({ kind: 'library' }),
    },
    {
      id: 'board.keep',
      ...sheets,
      label: 'Keep the board in the library…',
      run: () => build && openDialog({ kind: 'library', keep: build.board }),
    },
    {
      id: 'board.keep-case',
      ...sheets,
      label: 'Keep the case in the library…',
      run: () => build && openDialog({ kind: 'library', keep: build.case }),
    },
    {
      id: 'board.compare',
      ...sheets,
      label: 'Compare the board with a sheet…',
      run: () => compareWithSheet(workbench, 'board'),
    },
    {
      id: 'board.compare-case',
      ...sheets,
      label: 'Compare the case with a sheet…',
      run: () => compareWithSheet(workbench, 'case'),
    },
  ];
}

async function compareWithSheet({ editor, session }: Workbench, kind: 'board' | 'case'): Promise<void> {
  const build = editor.getState().open?.history.present;
  const theirs = build && (await askSheet(session, kind));
  if (build && theirs) session.getState().openDialog({ kind: 'compare', mine: build[kind], theirs });
}
