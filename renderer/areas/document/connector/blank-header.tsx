import { useState } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import type { Grid } from '../../../../boards/document/grid';
import { LIMITS } from '../../../../boards/document/limits';
import { orientationOf } from '../../../../boards/drawing/orientation';
import { blankHeader, headerTitle } from '../../../../boards/library/blank-header';
import { Button } from '../../../look/button';
import { ReadLine } from '../../../look/read-line';
import { TextLine } from '../../../look/text-line';
import { readCount } from '../../../words/size-words';
import { useBuild } from '../../../workbench';
import { layoutOf } from './header-layout';
import { LabelPreview } from './label-preview';
import { NumberingPicker } from './numbering-picker';
import { PitchFields } from './pitch-fields';
import './connector.css';

/** What a person has in mind most often: two rows at 2.54 mm, counted odd and even. */
const USUAL: Grid = {
  rows: 2,
  cols: 5,
  pitchMm: 2.54,
  numbering: { scheme: 'zig-zag', from: 'bottom-left' },
};

interface BlankHeaderProps {
  /** Gives the header its id and its place. */
  readonly onAdd: (grid: Grid, names: Pick<Connector, 'print' | 'title'>) => void;
  readonly onCancel: () => void;
}

/** Rows, columns, pitch and numbering of a header of which nothing is known yet, with its numbers as they would be. */
export function BlankHeader({ onAdd, onCancel }: BlankHeaderProps) {
  const { view, board } = useBuild();
  const [print, setPrint] = useState('');
  const [grid, setGrid] = useState(USUAL);
  const [wrong, setWrong] = useState<readonly string[]>([]);
  const onProblem = (label: string, problem: boolean) =>
    setWrong((now) => [...now.filter((other) => other !== label), ...(problem ? [label] : [])]);
  const title = print === '' ? headerTitle(board.connectors) : 'open posts';
  const header = blankHeader(grid, { id: 'blank', print, title, place: { xMm: 0, yMm: 0, turn: 0 } });
  const change = (changed: Partial<Grid>) => setGrid({ ...grid, ...changed });
  const { rowPitchMm, ...square } = grid;
  return (
    <div className="blank-header">
      <div className="form-row">
        <TextLine label="Print on the board" value={print} maxLength={LIMITS.textLength} onDone={setPrint} />
        <ReadLine
          label="Rows"
          shown={String(grid.rows)}
          read={(typed) => readCount(typed, 'rows')}
          onProblem={onProblem}
          onDone={(rows) => change({ rows })}
        />
        <ReadLine
          label="Columns"
          shown={String(grid.cols)}
          read={(typed) => readCount(typed, 'columns')}
          onProblem={onProblem}
          onDone={(cols) => change({ cols })}
        />
        <PitchFields
          pitchMm={grid.pitchMm}
          rowPitchMm={rowPitchMm ?? null}
          onProblem={onProblem}
          onChange={({ pitchMm = grid.pitchMm, rowPitchMm: across = rowPitchMm ?? null }) =>
            setGrid({ ...square, pitchMm, ...(across !== null && { rowPitchMm: across }) })
          }
        />
      </div>
      <NumberingPicker
        grid={grid}
        orientation={orientationOf(view)}
        turn={0}
        onChoose={(numbering) => change({ numbering })}
      />
      <LabelPreview connector={header} layout={layoutOf(header, view)} />
      <div className="window-doings">
        <Button onPress={onCancel}>Cancel</Button>
        <Button kind="main" disabled={wrong.length > 0} onPress={() => onAdd(grid, { print, title })}>
          Add the header
        </Button>
      </div>
    </div>
  );
}
