import { useMemo } from 'react';
import type { Action } from '../actions/action';
import { useActions } from '../actions/actions';
import { shortcutWords } from '../actions/shortcut';
import { isMac } from '../actions/use-keys';
import { Window } from '../look/window';
import { useEditor, useWorkbench } from '../workbench';
import { boardEntries } from './board-entries';
import { type SearchEntry, SearchList } from './search-list';

/** One line to find anything: what can be done, leads, connectors, pins, findings. */
export function SearchDialog({ onClose }: { readonly onClose: () => void }) {
  const workbench = useWorkbench();
  const mac = isMac(workbench);
  const actions = useActions();
  const build = useEditor((editor) => editor.open?.history.present);
  const things = useMemo(() => (build ? boardEntries(workbench, build) : []), [workbench, build]);
  const entries = [...actions.map((action) => actionEntry(action, mac)), ...things].map((entry) => ({
    ...entry,
    run: () => {
      onClose();
      entry.run();
    },
  }));
  return (
    <Window title="Search everything" onClose={onClose}>
      <SearchList
        label="Search everything"
        placeholder="A lead, a pin, a signal, or something to do"
        entries={entries}
        empty="Nothing here is called that."
      />
    </Window>
  );
}

function actionEntry({ id, label, shortcuts: [shortcut], enabled, run }: Action, mac: boolean): SearchEntry {
  return {
    id: `do ${id}`,
    title: label,
    words: 'something to do',
    keys: shortcut === undefined ? undefined : shortcutWords(shortcut, mac),
    disabled: !enabled,
    run,
  };
}
