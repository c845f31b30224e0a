import { beginNew } from '../areas/route/tray/tray-additions';
import { chosenPart } from '../areas/route/tray/tray-bench';
import { lookFromOther, remove, turnBoard } from '../areas/route/tray/tray-moves';
import { TRAY_TOOLS } from '../store/session';
import { TOOL_WORDS, trayPartName } from '../words/tray-words';
import type { Workbench } from '../workbench';
import type { Action } from './action';

/** What can be done with the tray of the case. Lone keys for it are the map's own. */
export function trayActions(workbench: Workbench): readonly Action[] {
  const build = workbench.editor.getState().open?.history.present;
  const tray = build?.case.tray;
  const enabled = tray !== undefined && workbench.session.getState().area === 'route';
  const part = enabled ? chosenPart(workbench) : undefined;
  const named = build && tray && part ? trayPartName(build, tray, part) : 'the chosen place';
  return [
    ...TRAY_TOOLS.filter((tool) => tool !== 'choose').map(
      (tool): Action => ({
        id: `tray.${tool}`,
        menu: 'tray',
        part: 0,
        label: TOOL_WORDS[tool],
        shortcuts: [],
        enabled,
        run: () => beginNew(workbench, tool),
      }),
    ),
    {
      id: 'tray.turn-board',
      menu: 'tray',
      part: 1,
      label: 'Turn the board on the tray',
      shortcuts: [],
      enabled: part?.kind === 'board',
      run: () => turnBoard(workbench),
    },
    {
      id: 'tray.remove',
      menu: 'tray',
      part: 1,
      label: `Remove ${named} from the tray`,
      shortcuts: [],
      enabled: part !== undefined,
      run: () => remove(workbench),
    },
    {
      id: 'tray.lay-all',
      menu: 'tray',
      part: 2,
      label: 'Lay all cables',
      shortcuts: [],
      enabled: tray !== undefined,
      run: () => {
        workbench.session.getState().goTo('route');
        workbench.session.getState().openLaying(true);
      },
    },
    {
      id: 'tray.other-side',
      menu: 'tray',
      part: 3,
      label: 'Look at the tray from the other side',
      shortcuts: ['Mod+Shift+B'],
      enabled,
      run: () => lookFromOther(workbench),
    },
  ];
}
