import { type ReactNode, useState } from 'react';
import { countRead } from '../../files/read-library';
import { Button } from '../../look/button';
import { SearchBox } from '../../look/search-box';
import { counted } from '../../words/list-words';
import { SheetList } from './sheet-list';
import { sheetSections } from './sheet-rows';
import type { LibraryInHand } from './use-library';

interface LibraryFrameProps {
  readonly inHand: LibraryInHand;
  readonly chosen: string | null;
  /** Only sheets of this kind; what cannot be used is left to the library itself. */
  readonly only?: 'board' | 'case';
  readonly onChoose: (handle: string) => void;
  readonly onOpen: (handle: string) => void;
  /** What is shown beside the list. */
  readonly children: ReactNode;
  /** Shown in place of everything while there is no sheet at all. */
  readonly empty: ReactNode;
}

/** The list with its search at the left, what is chosen at the right, and how far reading has come. */
export function LibraryFrame(props: LibraryFrameProps) {
  const { inHand, chosen, only, onChoose, onOpen, children, empty } = props;
  const { library, problem, reading, stop } = inHand;
  const [typed, setTyped] = useState('');
  if (problem !== null) {
    return (
      <div className="library-refused" role="alert">
        <h3>{problem.title}</h3>
        {problem.lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
        <p>{problem.advice}</p>
      </div>
    );
  }
  if (library !== null && !reading && library.sheets.length === 0) return empty;
  const sections = library === null ? [] : sheetSections(library.sheets, typed);
  return (
    <div className="library">
      <div className="library-side">
        <SearchBox
          label="Search sheets"
          placeholder="A name, a print, a signal, a size"
          autoFocus
          value={typed}
          onChange={setTyped}
        />
        <SheetList
          sections={only === undefined ? sections : sections.filter(({ id }) => id === only)}
          chosen={chosen}
          empty={emptyWords(reading, typed, only)}
          onChoose={onChoose}
          onOpen={onOpen}
        />
        <p className="library-reading small soft" role="status">
          {library !== null && reading && (
            <>
              {counted(countRead(library), 'file')} of {library.sheets.length} read.{' '}
              <Button kind="link" onPress={stop}>
                Stop
              </Button>
            </>
          )}
          {library?.cut && 'There are more files in the folder than are listed here.'}
        </p>
      </div>
      <section className="library-details" aria-label="The chosen sheet">
        {children}
      </section>
    </div>
  );
}

function emptyWords(reading: boolean, typed: string, only: LibraryFrameProps['only']): string {
  if (reading) return 'Reading…';
  if (typed.trim() !== '' || only === undefined) return 'No sheet has these words.';
  return `The library has no ${only} sheet.`;
}
