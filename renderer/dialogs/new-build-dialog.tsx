import { useState } from 'react';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { TextField } from 'react-aria-components/TextField';
import type { BoardSheet } from '../../boards/document/board-sheet';
import type { CaseSheet } from '../../boards/document/case-sheet';
import { demoDocument } from '../files/demo';
import { EMPTY_BOARD, EMPTY_CASE, newBuild, startBuild } from '../files/new-build';
import { chooseFile, readHandle } from '../files/open-document';
import { Button } from '../look/button';
import { Window } from '../look/window';
import { askSheet } from '../store/ask';
import { useWorkbench } from '../workbench';
import { SheetChoice } from './sheet-choice';

/** A name, a board sheet, a case sheet: what a build begins with. */
export function NewBuildDialog({ onClose }: { readonly onClose: () => void }) {
  const workbench = useWorkbench();
  const [name, setName] = useState('New build');
  const [board, setBoard] = useState<BoardSheet>(EMPTY_BOARD);
  const [caseSheet, setCase] = useState<CaseSheet>(EMPTY_CASE);
  const [wrongKind, setWrongKind] = useState('');

  const fromFile = async (kind: 'board' | 'case') => {
    setWrongKind('');
    const handle = await chooseFile(workbench);
    const read = handle === null ? null : await readHandle(workbench, handle);
    if (read === null) return;
    if (kind === 'board' && read.document.format === 'leadwright/board') setBoard(read.document);
    else if (kind === 'case' && read.document.format === 'leadwright/case') setCase(read.document);
    else
      setWrongKind(`“${read.file.name}” is not a ${kind} sheet. Choose a file that ends in .${kind}.json.`);
  };
  const fromLibrary = async (kind: 'board' | 'case') => {
    const sheet = await askSheet(workbench.session, kind);
    if (sheet?.format === 'leadwright/board') setBoard(sheet);
    if (sheet?.format === 'leadwright/case') setCase(sheet);
  };
  const fromDemo = async (which: 'board' | 'case') => {
    const document = await demoDocument(which);
    if (document.format === 'leadwright/board') setBoard(document);
    if (document.format === 'leadwright/case') setCase(document);
  };
  const start = async () => {
    onClose();
    await startBuild(workbench, newBuild(name.trim() === '' ? 'New build' : name.trim(), board, caseSheet));
  };

  return (
    <Window
      title="New build"
      onClose={onClose}
      doings={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button kind="main" onPress={() => void start()}>
            Start the build
          </Button>
        </>
      }
    >
      <TextField className="field" value={name} onChange={setName} autoFocus>
        <Label className="field-label">Name of the machine</Label>
        <Input maxLength={200} />
      </TextField>
      <SheetChoice
        kind="board"
        chosen={board === EMPTY_BOARD ? 'empty, to be documented' : board.name}
        onEmpty={() => setBoard(EMPTY_BOARD)}
        onDemo={() => void fromDemo('board')}
        onFile={() => void fromFile('board')}
        onLibrary={() => void fromLibrary('board')}
      />
      <SheetChoice
        kind="case"
        chosen={caseSheet === EMPTY_CASE ? 'empty, leads to be added' : caseSheet.name}
        onEmpty={() => setCase(EMPTY_CASE)}
        onDemo={() => void fromDemo('case')}
        onFile={() => void fromFile('case')}
        onLibrary={() => void fromLibrary('case')}
      />
      <p className="field-problem" role="alert">
        {wrongKind}
      </p>
    </Window>
  );
}
