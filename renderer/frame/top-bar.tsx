import { Search } from 'lucide-react';
import { Button } from 'react-aria-components/Button';
import { useAction } from '../actions/actions';
import { shortcutWords } from '../actions/shortcut';
import { isMac } from '../actions/use-keys';
import { changesOf, isUnsaved, type OpenBuild } from '../store/editor';
import { counted } from '../words/list-words';
import { useEditor, useWorkbench } from '../workbench';
import { Menus } from './menus';

/** What is open, whether it is saved, the menus and the way to everything. */
export function TopBar() {
  const workbench = useWorkbench();
  const open = useEditor((editor) => editor.open);
  const search = useAction('edit.search');
  const [keys = ''] = search.shortcuts;
  return (
    <header className="top-bar">
      <Menus />
      <h1 className="top-name">{open ? open.history.present.name : 'Leadwright'}</h1>
      {open && (
        <p className="soft small top-state" title={open.file.folder ?? undefined}>
          {stateWords(open)}
        </p>
      )}
      <Button className="button search-button" onPress={() => search.run()}>
        <Search size={16} aria-hidden="true" />
        <span>Search everything</span>
        <kbd className="keys">{shortcutWords(keys, isMac(workbench))}</kbd>
      </Button>
    </header>
  );
}

/** "saved in study-3.build.json", "2 unsaved changes", "not saved yet". */
function stateWords(open: OpenBuild): string {
  const { file } = open;
  const changes = changesOf(open);
  if (isUnsaved(open)) return changes === 0 ? 'recovered, not saved' : counted(changes, 'unsaved change');
  if (file.handle === null) return 'not saved yet';
  return file.readOnly ? `${file.name}, read only` : `saved in ${file.name}`;
}
