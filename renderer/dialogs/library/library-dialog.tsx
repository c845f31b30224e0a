import { useEffect, useRef, useState } from 'react';
import {
  duplicateSheet,
  importSheet,
  keepSheet,
  type OpenedSheet,
  openSheet,
  removeSheet,
  renameSheet,
} from '../../files/library-work';
import { startWith } from '../../files/offer-sheet';
import { countRead, type ReadLibrary } from '../../files/read-library';
import type { Sheet } from '../../files/sheet';
import { Button } from '../../look/button';
import { Window } from '../../look/window';
import { askFolder } from '../../store/ask';
import { useEditor, useWorkbench } from '../../workbench';
import { LibraryEmpty } from './library-empty';
import { LibraryFrame } from './library-frame';
import { SheetDetails } from './sheet-details';
import { SheetDoings } from './sheet-doings';
import { useLibrary } from './use-library';
import { useOpened } from './use-opened';
import './library.css';

interface LibraryDialogProps {
  /** Put into the library as soon as it has been read. */
  readonly keep?: Sheet | undefined;
  readonly onClose: () => void;
}

/** The person's own sheets: found, used, compared, copied, brought in and taken out. */
export function LibraryDialog({ keep, onClose }: LibraryDialogProps) {
  const workbench = useWorkbench();
  const build = useEditor((editor) => editor.open?.history.present);
  const inHand = useLibrary();
  const { library, reload } = inHand;
  const [chosen, setChosen] = useState<string | null>(null);
  /** The sheet that a build is to begin with as soon as it has been read. */
  const wanted = useRef<string | null>(null);

  /** Does something that may add or change a sheet, then shows the library with that sheet chosen. */
  const change = async (work: (library: ReadLibrary) => Promise<string | null>) => {
    // A library that was not read to its end may hide a sheet of the same id.
    const isWhole = library !== null && countRead(library) === library.sheets.length;
    const whole = isWhole ? library : await reload();
    const handle = whole === null ? null : await work(whole);
    if (handle === null) return;
    await reload();
    setChosen(handle);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the window opens
  useEffect(() => {
    const begin = async () => {
      const whole = await reload();
      const handle = whole === null || keep === undefined ? null : await keepSheet(workbench, whole, keep);
      if (handle === null) return;
      await reload();
      setChosen(handle);
    };
    void begin();
    return () => {
      wanted.current = null;
    };
  }, []);

  const listed = library?.sheets.find(({ handle }) => handle === chosen);
  const opened = useOpened(listed);
  const startNew = async (sheet: Sheet) => {
    onClose();
    await startWith(workbench, sheet);
  };
  const choose = (handle: string) => {
    if (handle !== wanted.current) wanted.current = null;
    setChosen(handle);
  };
  const startWithFile = async (handle: string) => {
    wanted.current = handle;
    const found = opened?.handle === handle ? opened : await openSheet(workbench, handle);
    if (found === null || wanted.current !== handle) return;
    wanted.current = null;
    await startNew(found.sheet);
  };
  const goToFolder = async (handle: string | null) => {
    const used = await workbench.host.moveLibrary({ folder: handle });
    if (used.ok) setChosen(null);
    await reload();
  };
  const chooseFolder = async () => {
    const page = workbench.about.dialogs === 'page';
    const handle = await (page ? askFolder(workbench.session) : workbench.host.chooseFolder());
    if (handle !== null) await goToFolder(handle);
  };
  const rename = async (sheet: OpenedSheet, name: string) => {
    // What is chosen stays so: a name is also done by choosing another sheet.
    if ((await renameSheet(workbench, sheet, name)) !== null) await reload();
  };
  const keepOwn = (sheet: Sheet) => change((whole) => keepSheet(workbench, whole, sheet));
  const bringIn = () => change((whole) => importSheet(workbench, whole));

  return (
    <Window
      title="Library of sheets"
      size="large"
      onClose={onClose}
      doings={
        <div className="library-foot">
          <Button onPress={() => void bringIn()}>Import a file…</Button>
          {build && <Button onPress={() => void keepOwn(build.board)}>Keep this build’s board</Button>}
          {build && <Button onPress={() => void keepOwn(build.case)}>Keep this build’s case</Button>}
        </div>
      }
    >
      <div className="library-where soft small">
        <span className="library-path">{library ? library.folder : '\u00a0'}</span>
        <Button kind="link" onPress={() => void chooseFolder()}>
          Another folder…
        </Button>
        {(library === null || !library.usual) && !inHand.reading && (
          <Button kind="link" onPress={() => void goToFolder(null)}>
            The usual folder
          </Button>
        )}
      </div>
      <LibraryFrame
        inHand={inHand}
        chosen={chosen}
        onChoose={choose}
        onOpen={(handle) => void startWithFile(handle)}
        empty={<LibraryEmpty hasBuild={build !== undefined} />}
      >
        {listed === undefined ? (
          <p className="soft">Choose a sheet on the left to see it and what can be done with it.</p>
        ) : (
          <>
            <SheetDetails
              key={`${listed.handle} ${listed.modifiedMs}`}
              listed={listed}
              opened={opened}
              onRename={(sheet, name) => void rename(sheet, name)}
            />
            {opened && (
              <SheetDoings
                sheet={opened.sheet}
                file={{ handle: opened.handle, onKept: () => void reload() }}
                onStart={() => void startNew(opened.sheet)}
                onDuplicate={() => void change((whole) => duplicateSheet(workbench, whole, opened))}
                onRemove={async () => {
                  if (await removeSheet(workbench, opened)) {
                    setChosen(null);
                    await reload();
                  }
                }}
                onClose={onClose}
              />
            )}
          </>
        )}
      </LibraryFrame>
    </Window>
  );
}
