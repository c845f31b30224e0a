import { openDemo } from '../files/demo';
import { closeBuild } from '../files/leave-build';
import { openChosen } from '../files/open-document';
import { saveBuild, saveBuildAs } from '../files/save-build';
import type { Workbench } from '../workbench';
import type { Action } from './action';

export function fileActions(workbench: Workbench): readonly Action[] {
  const open = workbench.editor.getState().open !== null;
  const { openDialog } = workbench.session.getState();
  const file = (part: number) => ({ menu: 'file', part }) as const;
  return [
    {
      id: 'file.new',
      ...file(0),
      label: 'New build…',
      shortcuts: ['Mod+N'],
      enabled: true,
      run: () => openDialog({ kind: 'new-build' }),
    },
    {
      id: 'file.open',
      ...file(0),
      label: 'Open…',
      shortcuts: ['Mod+O'],
      enabled: true,
      run: () => openChosen(workbench),
    },
    {
      id: 'file.recent',
      ...file(0),
      label: 'Worked on last…',
      shortcuts: [],
      enabled: true,
      run: () => openDialog({ kind: 'recent' }),
    },
    {
      id: 'help.demo',
      ...file(0),
      label: 'Open the demo build',
      shortcuts: [],
      enabled: true,
      run: () => openDemo(workbench),
    },
    {
      id: 'help.demo-cables',
      ...file(0),
      label: 'Open the demo with every cable',
      shortcuts: [],
      enabled: true,
      run: () => openDemo(workbench, 'everyCable'),
    },
    {
      id: 'help.demo-cramped',
      ...file(0),
      label: 'Open the demo of a cramped case',
      shortcuts: [],
      enabled: true,
      run: () => openDemo(workbench, 'cramped'),
    },
    {
      id: 'file.save',
      ...file(1),
      label: 'Save',
      shortcuts: ['Mod+S'],
      enabled: open,
      run: () => saveBuild(workbench),
    },
    {
      id: 'file.save-as',
      ...file(1),
      label: 'Save as…',
      shortcuts: ['Mod+Shift+S'],
      enabled: open,
      run: () => saveBuildAs(workbench),
    },
    {
      id: 'file.versions',
      ...file(1),
      label: 'Earlier versions…',
      shortcuts: [],
      enabled: workbench.editor.getState().open?.file.handle != null,
      run: () => openDialog({ kind: 'versions' }),
    },
    {
      id: 'file.close',
      ...file(3),
      label: 'Close',
      shortcuts: ['Mod+W'],
      enabled: open,
      run: () => closeBuild(workbench),
    },
  ];
}
