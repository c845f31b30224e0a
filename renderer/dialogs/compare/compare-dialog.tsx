import { useMemo, useState } from 'react';
import type { Choices } from '../../../boards/edit/compare/choices';
import { compareBoards } from '../../../boards/edit/compare/compare-boards';
import { compareCases } from '../../../boards/edit/compare/compare-cases';
import type { Take } from '../../../boards/edit/compare/taking';
import { doCommand } from '../../do-command';
import { keepMerged } from '../../files/library-work';
import { kindOfSheet, type Sheet } from '../../files/sheet';
import { Button } from '../../look/button';
import { Tick } from '../../look/tick';
import { Window } from '../../look/window';
import type { LibraryFile } from '../../store/dialog';
import { counted } from '../../words/list-words';
import { useEditor, useWorkbench } from '../../workbench';
import { CompareTable } from './compare-table';
import { boardRows, type ComparedRow, caseRows } from './compared-rows';
import { boardOf, mergeCommand, type Preview, previewOf, sheetPreview } from './merging';
import { TakeChoice } from './take-choice';
import './compare.css';

interface CompareDialogProps {
  readonly mine: Sheet;
  readonly theirs: Sheet;
  readonly of?: LibraryFile | undefined;
  readonly onClose: () => void;
}

/**
 * Two sheets side by side. What the other says can be taken over: into the open build where mine is of that
 * build, or into the file of mine in the library.
 */
export function CompareDialog({ mine, theirs, of, onClose }: CompareDialogProps) {
  const workbench = useWorkbench();
  const build = useEditor((editor) => editor.open?.history.present);
  const rows = useMemo(() => rowsOf(mine, theirs), [mine, theirs]);
  const [onlyDifferences, setOnlyDifferences] = useState(true);
  const [choices, setChoices] = useState<Choices>({ others: 'both', rows: [] });

  const ofBuild = build !== undefined && (build.board === mine || build.case === mine);
  const preview = useMemo((): Preview | null => {
    if (ofBuild && build) return previewOf(build, mergeCommand(theirs, choices));
    return of === undefined ? null : sheetPreview(mine, theirs, choices);
  }, [ofBuild, build, mine, theirs, choices, of]);
  const choose = (key: string, take: Take) =>
    setChoices(({ others, rows: chosen }) => ({
      others,
      rows: [...chosen.filter((row) => row.key !== key), { key, take }],
    }));
  const differing = rows.filter(({ takeKey }) => takeKey !== null).length;
  const takeOver = async () => {
    if (ofBuild) {
      if (doCommand(workbench, mergeCommand(theirs, choices))) onClose();
    } else if (of !== undefined && preview?.ok && (await keepMerged(workbench, of.handle, preview.sheet))) {
      of.onKept();
      onClose();
    }
  };

  return (
    <Window
      title={`Compare “${mine.name}” with “${theirs.name}”`}
      size="wide"
      onClose={onClose}
      doings={
        <>
          <Button onPress={onClose}>Close</Button>
          {preview !== null && (
            <Button kind="main" disabled={!preview.ok || !preview.changes} onPress={() => void takeOver()}>
              {ofBuild ? 'Take over into this build' : `Take over into “${mine.name}”`}
            </Button>
          )}
        </>
      }
    >
      <div className="compare-head">
        <p role="status">
          {differing === 0
            ? `The two say the same of the ${kindOfSheet(mine)}.`
            : `${counted(differing, 'difference')}.`}{' '}
          <span className="soft">{preview === null ? NOWHERE : previewWords(preview, ofBuild)}</span>
        </p>
        <div className="compare-tools">
          <Tick on={onlyDifferences} onChange={setOnlyDifferences}>
            Only differences
          </Tick>
          {preview !== null && differing > 0 && (
            <TakeChoice
              label="Of every difference"
              shown
              take={choices.others}
              onTake={(others) => setChoices({ others, rows: [] })}
            />
          )}
        </div>
      </div>
      <CompareTable
        rows={onlyDifferences ? rows.filter(({ differs }) => differs) : rows}
        names={[ofBuild ? 'This build' : `“${mine.name}”`, `“${theirs.name}”`]}
        choices={preview === null ? null : choices}
        after={boardOf(preview)}
        onChoose={choose}
      />
    </Window>
  );
}

const NOWHERE = 'To take something over, compare from the library or from a build.';

function rowsOf(mine: Sheet, theirs: Sheet): readonly ComparedRow[] {
  if (mine.format === 'leadwright/board' && theirs.format === 'leadwright/board')
    return boardRows(compareBoards(mine, theirs));
  if (mine.format === 'leadwright/case' && theirs.format === 'leadwright/case')
    return caseRows(compareCases(mine, theirs));
  throw new Error('A board sheet cannot be compared with a case sheet');
}

function previewWords(preview: Preview, ofBuild: boolean): string {
  if (!preview.ok) return preview.words;
  if (!preview.changes) return 'Nothing would change.';
  if (!ofBuild) return 'The sheet as it is now goes to the folder “removed”.';
  if (preview.plugsOff > 0)
    return `${counted(preview.plugsOff, 'plug')} would come off, because they no longer fit.`;
  return 'Every plug stays where it is. One step, which can be undone.';
}
