import { LIMITS } from '../../../boards/document/limits';
import type { OpenedSheet } from '../../files/library-work';
import type { ListedSheet } from '../../files/read-library';
import { TextLine } from '../../look/text-line';
import { headWords, refusedWords } from '../../words/library-words';
import { whenWords } from '../../words/time-words';
import { SheetPicture } from './sheet-picture';

interface SheetDetailsProps {
  readonly listed: ListedSheet;
  /** The same in full, once it has been read. */
  readonly opened: OpenedSheet | null;
  readonly onRename?: (opened: OpenedSheet, name: string) => void;
}

/** What is known of the chosen sheet: a picture, its name, where it lies; or why the file is no sheet. */
export function SheetDetails({ listed, opened, onRename }: SheetDetailsProps) {
  const { head, name, modifiedMs } = listed;
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
