import { useEffect, useState } from 'react';
import { LIMITS } from '../../../boards/document/limits';
import { type OpenedSheet, openSheet } from '../../files/library-work';
import type { ListedSheet } from '../../files/read-library';
import { TextLine } from '../../look/text-line';
import { headWords, refusedWords } from '../../words/library-words';
import { whenWords } from '../../words/time-words';
import { useWorkbench } from '../../workbench';
import { SheetPicture } from './sheet-picture';

interface SheetDetailsProps {
  readonly listed: ListedSheet;
  readonly onRead: (opened: OpenedSheet | null) => void;
  readonly onRename?: (opened: OpenedSheet, name: string) => void;
}

/** What is known of the chosen sheet: a picture, its name, where it lies; or why the file is no sheet. */
export function SheetDetails({ listed, onRead, onRename }: SheetDetailsProps) {
  const workbench = useWorkbench();
  const [opened, setOpened] = useState<OpenedSheet | null>(null);
  const { handle, head, name, modifiedMs } = listed;
  const isSheet = head?.outcome === 'sheet';
  useEffect(() => {
    let gone = false;
    const read = async () => {
      const found = isSheet ? await openSheet(workbench, handle) : null;
      if (gone) return;
      setOpened(found);
      onRead(found);
    };
    void read();
    return () => {
      gone = true;
    };
  }, [workbench, handle, isSheet, onRead]);

  if (head !== null && head.outcome !== 'sheet') {
    return (
      <div className="library-refused">
        <h3>{name} cannot be used</h3>
        {refusedWords(head).map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    );
  }
  return (
    <>
      <div className="library-picture">{opened && <SheetPicture sheet={opened.sheet} />}</div>
      {opened && onRename ? (
        <TextLine
          label="Name of the sheet"
          value={opened.sheet.name}
          maxLength={LIMITS.textLength}
          onDone={(title) => title.trim() !== '' && onRename(opened, title.trim())}
        />
      ) : (
        <p>
          <strong>{head?.title ?? name}</strong>
        </p>
      )}
      <p className="soft small">
        {head && `${headWords(head)}, `}
        {name}, changed {whenWords(modifiedMs, Date.now())}
      </p>
      {opened?.sheet.notes !== undefined && <p className="small library-notes">{opened.sheet.notes}</p>}
    </>
  );
}
