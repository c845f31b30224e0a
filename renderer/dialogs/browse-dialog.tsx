import { File, Folder as FolderSign } from 'lucide-react';
import { useCallback, useEffect, useState } from 'react';
import { Breadcrumb, Breadcrumbs } from 'react-aria-components/Breadcrumbs';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { TextField } from 'react-aria-components/TextField';
import type { FileKind, Folder } from '../../boards/host';
import { Button } from '../look/button';
import { Window } from '../look/window';
import type { SavePlace } from '../store/dialog';
import { readProblemWords, saveProblemWords } from '../words/host-words';
import { whenWords } from '../words/time-words';
import { useWorkbench } from '../workbench';

type Purpose =
  | { readonly kind: 'open' | 'folder'; readonly answer: (handle: string | null) => void }
  | {
      readonly kind: 'save';
      readonly suggested: string;
      readonly file: FileKind;
      readonly answer: (place: SavePlace | null) => void;
    };

const TITLES = { open: 'Open', folder: 'Choose a folder', save: 'Save as' } as const satisfies Record<
  Purpose['kind'],
  string
>;

/** Folders and files, for machines whose own dialogs are out of reach. */
export function BrowseDialog({ purpose }: { readonly purpose: Purpose }) {
  const { host } = useWorkbench();
  const [folder, setFolder] = useState<Folder | null>(null);
  const [problem, setProblem] = useState('');
  const [name, setName] = useState(purpose.kind === 'save' ? purpose.suggested : '');

  const goInto = useCallback(
    async (handle: string | null) => {
      const found = await host.browse({ folder: handle });
      setProblem(found.ok ? '' : wordsIn(readProblemWords(found.problem)));
      if (found.ok) setFolder(found.value);
    },
    [host],
  );
  useEffect(() => void goInto(null), [goInto]);

  const choose = (handle: string) => {
    const entry = folder?.entries.find((each) => each.handle === handle);
    if (entry?.kind === 'folder') void goInto(handle);
    else if (purpose.kind === 'open') purpose.answer(handle);
    else if (entry && purpose.kind === 'save') setName(entry.name);
  };
  const save = async () => {
    if (purpose.kind !== 'save' || folder === null) return;
    const place = await host.placeNew({ folder: folder.handle, name, kind: purpose.file });
    if (place.ok) purpose.answer(place.value);
    else setProblem(wordsIn(saveProblemWords(place.problem)));
  };

  return (
    <Window
      title={TITLES[purpose.kind]}
      size="large"
      onClose={() => purpose.answer(null)}
      doings={
        <>
          <Button onPress={() => purpose.answer(null)}>Cancel</Button>
          {purpose.kind === 'folder' && (
            <Button
              kind="main"
              disabled={folder === null}
              onPress={() => folder !== null && purpose.answer(folder.handle)}
            >
              Use this folder
            </Button>
          )}
          {purpose.kind === 'save' && (
            <Button kind="main" disabled={name.trim() === ''} onPress={() => void save()}>
              Save
            </Button>
          )}
        </>
      }
    >
      {purpose.kind === 'save' && (
        <TextField
          className="field"
          value={name}
          onChange={setName}
          onKeyDown={(event) => {
            if (event.key === 'Enter' && name.trim() !== '') void save();
            else event.continuePropagation();
          }}
          autoFocus
        >
          <Label className="field-label">Name of the file</Label>
          <Input maxLength={255} />
        </TextField>
      )}
      <Breadcrumbs className="crumbs" aria-label="Folders above" onAction={(key) => void goInto(String(key))}>
        {(folder?.crumbs ?? []).map((crumb) => (
          <Breadcrumb key={crumb.handle} id={crumb.handle} className="crumb">
            <Crumb name={crumb.name} onPress={() => void goInto(crumb.handle)} />
          </Breadcrumb>
        ))}
      </Breadcrumbs>
      <Entries folder={folder} autoFocus={purpose.kind !== 'save'} onChoose={choose} />
      <p className="field-problem" role="alert">
        {problem}
      </p>
    </Window>
  );
}

function wordsIn(message: { readonly title: string; readonly advice: string }): string {
  return `${message.title}. ${message.advice}`;
}

function Crumb({ name, onPress }: { readonly name: string; readonly onPress: () => void }) {
  return (
    <Button kind="link" onPress={onPress}>
      {name === '' ? '/' : name}
    </Button>
  );
}

interface EntriesProps {
  readonly folder: Folder | null;
  readonly autoFocus: boolean;
  readonly onChoose: (handle: string) => void;
}

function Entries({ folder, autoFocus, onChoose }: EntriesProps) {
  if (folder === null) return <div className="window-list" />;
  return (
    <>
      <ListBox
        key={folder.handle}
        className="window-list"
        aria-label="Folders and files"
        autoFocus={autoFocus && 'first'}
        items={folder.entries}
        onAction={(key) => onChoose(String(key))}
        renderEmptyState={() => (
          <p className="soft window-list-empty">Nothing in this folder can be opened.</p>
        )}
      >
        {(entry) => (
          <ListBoxItem id={entry.handle} textValue={entry.name} className="option browse-entry">
            <span>{entry.name}</span>
            {entry.kind === 'folder' ? (
              <FolderSign size={18} role="img" aria-label="folder" />
            ) : (
              <File size={18} aria-hidden="true" />
            )}
            <span className="soft small">
              {entry.kind === 'file' ? whenWords(entry.modifiedMs, Date.now()) : ''}
            </span>
          </ListBoxItem>
        )}
      </ListBox>
      {folder.cut && <p className="soft small">There are more entries than are listed here.</p>}
    </>
  );
}
