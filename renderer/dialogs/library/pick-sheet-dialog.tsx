import { useEffect, useState } from 'react';
import { openSheet } from '../../files/library-work';
import type { Sheet } from '../../files/sheet';
import { Button } from '../../look/button';
import { Window } from '../../look/window';
import { useWorkbench } from '../../workbench';
import { LibraryFrame } from './library-frame';
import { SheetDetails } from './sheet-details';
import { useLibrary } from './use-library';
import { useOpened } from './use-opened';
import './library.css';

interface PickSheetDialogProps {
  readonly of: 'board' | 'case';
  readonly answer: (sheet: Sheet | null) => void;
}

/** One sheet of the library, chosen for something else. */
export function PickSheetDialog({ of, answer }: PickSheetDialogProps) {
  const workbench = useWorkbench();
  const inHand = useLibrary();
  const { library, reload } = inHand;
  const [chosen, setChosen] = useState<string | null>(null);
  useEffect(() => void reload(), [reload]);
  const listed = library?.sheets.find(({ handle }) => handle === chosen);
  const opened = useOpened(listed);
  const use = async (handle: string) => {
    const found = await openSheet(workbench, handle);
    if (found !== null) answer(found.sheet);
  };
  return (
    <Window
      title={of === 'board' ? 'Choose a board sheet' : 'Choose a case sheet'}
      size="large"
      onClose={() => answer(null)}
      doings={
        <>
          <Button onPress={() => answer(null)}>Cancel</Button>
          <Button
            kind="main"
            disabled={listed === undefined}
            onPress={() => listed && void use(listed.handle)}
          >
            Use this sheet
          </Button>
        </>
      }
    >
      <LibraryFrame
        inHand={inHand}
        chosen={chosen}
        only={of}
        onChoose={setChosen}
        onOpen={(handle) => void use(handle)}
        empty={
          <p className="soft">The library is empty. Keep a sheet in it first: File, Library of sheets.</p>
        }
      >
        {listed ? (
          <SheetDetails key={listed.handle} listed={listed} opened={opened} />
        ) : (
          <p className="soft">Choose a sheet on the left to see it.</p>
        )}
      </LibraryFrame>
    </Window>
  );
}
