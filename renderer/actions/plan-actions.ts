import { connectorName } from '../../boards/document/names';
import { chosenOnPlan, copy, duplicate, paste, remove, turn } from '../areas/document/plan/plan-moves';
import type { Workbench } from '../workbench';
import type { Action } from './action';

const board = { menu: 'board', part: 1 } as const;

/** What can be done with the chosen connector on the board plan. Lone keys for it are the plan's own. */
export function planActions(workbench: Workbench): readonly Action[] {
  const { area, page, copied } = workbench.session.getState();
  const build = workbench.editor.getState().open?.history.present;
  const onPlan = build !== undefined && area === 'document' && page === 'plan';
  const connector = onPlan ? chosenOnPlan(workbench) : undefined;
  const named = build && connector ? connectorName(build, connector.id) : 'the chosen connector';
  const enabled = connector !== undefined;
  return [
    {
      id: 'board.turn-connector',
      ...board,
      label: `Turn ${named} on the board`,
      shortcuts: [],
      enabled,
      run: () => turn(workbench, 90),
    },
    {
      id: 'board.duplicate-connector',
      ...board,
      label: `Duplicate ${named}`,
      shortcuts: ['Mod+D'],
      enabled,
      run: () => duplicate(workbench),
    },
    {
      id: 'board.copy-connector',
      ...board,
      label: `Copy ${named}`,
      shortcuts: [],
      enabled,
      run: () => copy(workbench),
    },
    {
      id: 'board.paste-connector',
      ...board,
      label: 'Paste the copied connector',
      shortcuts: [],
      enabled: onPlan && copied !== null,
      run: () => paste(workbench),
    },
    {
      id: 'board.remove-connector',
      ...board,
      label: `Remove ${named} from the board`,
      shortcuts: [],
      enabled,
      run: () => remove(workbench),
    },
  ];
}
