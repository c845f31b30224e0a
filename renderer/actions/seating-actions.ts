import type { Workbench } from '../workbench';
import type { Action } from './action';

/** The best seating beside the wiring, in the Wire area. */
export function seatingActions({ editor, session }: Workbench): readonly Action[] {
  return [
    {
      id: 'board.best-seating',
      menu: 'board',
      part: 3,
      label: 'Plan the best seating…',
      shortcuts: ['Mod+B'],
      enabled: editor.getState().open !== null,
      run: () => {
        const { goTo, openSeating } = session.getState();
        goTo('wire');
        openSeating(true);
      },
    },
  ];
}
