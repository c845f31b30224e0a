import { putInBuild } from '../../files/offer-sheet';
import { saveSheetAs } from '../../files/save-build';
import { kindOfSheet, type Sheet } from '../../files/sheet';
import { Button } from '../../look/button';
import { askSheet } from '../../store/ask';
import type { LibraryFile } from '../../store/dialog';
import { useEditor, useWorkbench } from '../../workbench';

interface SheetDoingsProps {
  readonly sheet: Sheet;
  /** Where it lies; what is taken over from another sheet is written there. */
  readonly file: LibraryFile;
  readonly onStart: () => void;
  readonly onDuplicate: () => void;
  readonly onRemove: () => void;
  readonly onClose: () => void;
}

/** What can be done with the chosen sheet. */
export function SheetDoings({ sheet, file, onStart, onDuplicate, onRemove, onClose }: SheetDoingsProps) {
  const workbench = useWorkbench();
  const build = useEditor((editor) => editor.open?.history.present);
  const { openDialog } = workbench.session.getState();
  const kind = kindOfSheet(sheet);
  const own = kind === 'board' ? build?.board : build?.case;
  const compareWithOther = async () => {
    const other = await askSheet(workbench.session, kind);
    if (other !== null) openDialog({ kind: 'compare', mine: sheet, theirs: other, of: file });
  };
  return (
    <div className="library-doings">
      <Button kind="main" onPress={onStart}>
        New build with it
      </Button>
      {own && (
        <Button
          onPress={() => {
            onClose();
            putInBuild(workbench, sheet);
          }}
        >
          Use in this build
        </Button>
      )}
      {own && (
        <Button onPress={() => openDialog({ kind: 'compare', mine: own, theirs: sheet })}>
          Compare with this build’s {kind}…
        </Button>
      )}
      <Button onPress={() => void compareWithOther()}>Compare with another sheet…</Button>
      <Button onPress={onDuplicate}>Duplicate</Button>
      <Button onPress={() => void saveSheetAs(workbench, sheet)}>Save as a file…</Button>
      <Button onPress={onRemove}>Remove…</Button>
    </div>
  );
}
