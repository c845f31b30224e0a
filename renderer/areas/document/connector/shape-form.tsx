import { type Connector, SIDES, type Side } from '../../../../boards/document/connector';
import type { Corner } from '../../../../boards/document/grid';
import { orientationOf } from '../../../../boards/drawing/orientation';
import { Button } from '../../../look/button';
import { Choice } from '../../../look/choice';
import { ReadLine } from '../../../look/read-line';
import { familyChoices } from '../../../words/family-words';
import { numberingWords } from '../../../words/numbering-words';
import { readCount } from '../../../words/size-words';
import { useBuild, useWorkbench } from '../../../workbench';
import { drawnCorner, drawnSide } from './drawn-side';
import { PitchFields } from './pitch-fields';
import { reshape, type Shape, shapeOf } from './reshape';
import { WallFields } from './wall-fields';

/** How many pins at what pitch, which plugs enter, what walls stand round it, how it is counted. */
export function ShapeForm({ connector }: { readonly connector: Connector }) {
  const workbench = useWorkbench();
  const { view } = useBuild();
  const shape = shapeOf(connector);
  const change = (changed: Partial<Shape>) => void reshape(workbench, connector, changed);
  const drawn = (side: Side) => drawnSide(side, connector.place.turn, orientationOf(view));
  const corner = (one: Corner) => drawnCorner(one, connector.place.turn, orientationOf(view));
  return (
    <>
      <div className="form-row form-row-top">
        <ReadLine
          label="Rows"
          shown={String(shape.rows)}
          read={(typed) => readCount(typed, 'rows')}
          onDone={(rows) => change({ rows })}
        />
        <ReadLine
          label="Columns"
          shown={String(shape.cols)}
          read={(typed) => readCount(typed, 'columns')}
          onDone={(cols) => change({ cols })}
        />
        <PitchFields pitchMm={shape.pitchMm} rowPitchMm={shape.rowPitchMm} onChange={change} />
        <Choice
          label="Which plugs enter"
          options={familyChoices(shape.family)}
          chosen={shape.family}
          onChoose={(family) => change({ family })}
        />
      </div>
      <WallFields
        shroud={shape.shroud}
        sides={SIDES.map((id) => ({ id, drawn: drawn(id) }))}
        onChange={(shroud) => change({ shroud })}
      />
      <div className="form-doings">
        <span>Counted: {numberingWords(connector.grid.numbering, corner)}.</span>
        <Button
          onPress={() =>
            workbench.session.getState().openDialog({ kind: 'number-connector', connector: connector.id })
          }
        >
          Number it another way…
        </Button>
      </div>
    </>
  );
}
