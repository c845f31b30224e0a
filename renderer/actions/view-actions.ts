import { addTurns } from '../../boards/base/units';
import type { Settings } from '../../boards/host';
import { doCommand } from '../do-command';
import type { Workbench } from '../workbench';
import type { Action } from './action';

const ZOOM_STEP = 1.25;

const view = (part: number) => ({ menu: 'view', part }) as const;

export function viewActions(workbench: Workbench): readonly Action[] {
  return [
    ...areaActions(workbench),
    ...canvasActions(workbench),
    ...settingActions(workbench),
    largeSteps(workbench),
  ];
}

function areaActions(workbench: Workbench): readonly Action[] {
  const { area, goTo } = workbench.session.getState();
  const enabled = workbench.editor.getState().open !== null;
  return [
    {
      id: 'area.document',
      ...view(0),
      label: 'Document',
      shortcuts: ['Mod+1'],
      enabled,
      chosen: area === 'document',
      run: () => goTo('document'),
    },
    {
      id: 'area.wire',
      ...view(0),
      label: 'Wire',
      shortcuts: ['Mod+2'],
      enabled,
      chosen: area === 'wire',
      run: () => goTo('wire'),
    },
    {
      id: 'area.route',
      ...view(0),
      label: 'Route',
      shortcuts: ['Mod+3'],
      enabled,
      chosen: area === 'route',
      run: () => goTo('route'),
    },
    {
      id: 'area.diagnose',
      ...view(0),
      label: 'Diagnose',
      shortcuts: ['Mod+4'],
      enabled,
      chosen: area === 'diagnose',
      run: () => goTo('diagnose'),
    },
    {
      id: 'area.hand-over',
      ...view(0),
      label: 'Hand over',
      shortcuts: ['Mod+5'],
      enabled,
      chosen: area === 'hand-over',
      run: () => goTo('hand-over'),
    },
  ];
}

function canvasActions(workbench: Workbench): readonly Action[] {
  const build = workbench.editor.getState().open?.history.present;
  const { area, page } = workbench.session.getState();
  const wired = build !== undefined && (area === 'wire' || area === 'diagnose');
  const turned = wired || (build !== undefined && area === 'hand-over');
  const onTray = build?.case.tray !== undefined && area === 'route';
  const enabled = wired || onTray || (build !== undefined && area === 'document' && page === 'plan');
  const canvas = () => workbench.canvas.current;
  const lay = (changed: Partial<NonNullable<typeof build>['view']>) => {
    if (build) doCommand(workbench, { name: 'turn-view', args: { ...build.view, ...changed } });
  };
  return [
    {
      id: 'view.zoom-in',
      ...view(1),
      label: 'Zoom in',
      shortcuts: ['Mod+Plus', 'Mod+='],
      enabled,
      run: () => canvas()?.zoomBy(ZOOM_STEP),
    },
    {
      id: 'view.zoom-out',
      ...view(1),
      label: 'Zoom out',
      shortcuts: ['Mod+Minus'],
      enabled,
      run: () => canvas()?.zoomBy(1 / ZOOM_STEP),
    },
    {
      id: 'view.fit',
      ...view(1),
      label: area === 'route' ? 'Show the whole tray' : 'Show the whole board',
      shortcuts: ['Mod+0'],
      enabled,
      run: () => canvas()?.fitAll(),
    },
    {
      id: 'view.turn',
      ...view(2),
      label: 'Turn the view',
      shortcuts: ['Mod+Shift+ArrowRight'],
      enabled: turned,
      run: () => build && lay({ turn: addTurns(build.view.turn, 90) }),
    },
    {
      id: 'view.mirror',
      ...view(2),
      label: 'Mirror the view',
      shortcuts: [],
      enabled: turned,
      chosen: build?.view.mirrored === true,
      run: () => build && lay({ mirrored: !build.view.mirrored }),
    },
  ];
}

function settingActions(workbench: Workbench): readonly Action[] {
  const { settings, changeSettings } = workbench.session.getState();
  const change = (changed: Partial<Settings>) => {
    const next = { ...settings, ...changed };
    changeSettings(next);
    return workbench.host.writeSettings(next);
  };
  const theme = (name: Settings['theme'], label: string): Action => ({
    id: `view.theme-${name}`,
    ...view(3),
    label,
    shortcuts: [],
    enabled: true,
    chosen: settings.theme === name,
    run: () => change({ theme: name }),
  });
  return [
    theme('light', 'Light theme'),
    theme('dark', 'Dark theme'),
    theme('system', 'Theme of the system'),
    {
      id: 'view.large-type',
      ...view(4),
      label: 'Large type',
      shortcuts: [],
      enabled: true,
      chosen: settings.largeType,
      run: () => change({ largeType: !settings.largeType }),
    },
  ];
}

function largeSteps({ editor, session }: Workbench): Action {
  const { area, openDialog } = session.getState();
  return {
    id: 'view.large-steps',
    ...view(4),
    label: area === 'diagnose' ? 'What to do next in large letters' : 'Steps in large letters',
    shortcuts: ['F9'],
    enabled: editor.getState().open !== null,
    run: () => openDialog({ kind: area === 'diagnose' ? 'large-trial' : 'large-steps' }),
  };
}
