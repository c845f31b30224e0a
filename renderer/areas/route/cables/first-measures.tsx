import { useState } from 'react';
import type { Mm } from '../../../../boards/base/units';
import type { Lead } from '../../../../boards/document/lead';
import { Button } from '../../../look/button';
import { Choice } from '../../../look/choice';
import { LengthLine } from '../../../look/length-line';
import { useBuild, useWorkbench } from '../../../workbench';
import {
  beginsAtPart,
  CABLE_LENGTH_BOUNDS,
  firstCable,
  firstPieces,
  lengthLabel,
  startOptions,
  THICKNESS_BOUNDS,
} from './cable-fields';
import { measure } from './cable-moves';

/** A lead that nobody has measured: what has to be known before a way can be found. */
export function FirstMeasures({ lead }: { readonly lead: Lead }) {
  const workbench = useWorkbench();
  const build = useBuild();
  const [diameterMm, setDiameter] = useState<Mm>();
  const [lengthsMm, setLengths] = useState<ReadonlyMap<string, Mm>>(new Map());
  const [start, setStart] = useState('');
  const pieces = firstPieces(lead);
  const cable = firstCable(lead, { diameterMm, lengthsMm, start });
  const lengthLines = pieces.map((piece) => (
    <LengthLine
      key={piece.to}
      label={pieces.length > 1 ? lengthLabel(build, lead, piece) : 'Length, mm'}
      value={lengthsMm.get(piece.to)}
      bounds={CABLE_LENGTH_BOUNDS}
      onDone={(mm) => mm !== undefined && setLengths((before) => new Map(before).set(piece.to, mm))}
    />
  ));
  const measured =
    pieces.length > 1 ? 'measure each piece of it, from end to end' : 'measure from end to end';
  return (
    <>
      <p>
        Nobody has measured it yet. Lay it out straight and {measured}; how thick it is, measure with its
        sleeve.
      </p>
      <div className="route-pair">
        <LengthLine label="Thickness, mm" value={diameterMm} bounds={THICKNESS_BOUNDS} onDone={setDiameter} />
        {pieces.length === 1 && lengthLines}
      </div>
      {beginsAtPart(lead) && (
        <Choice label="Begins at" options={startOptions(build)} chosen={start} onChoose={setStart} />
      )}
      {pieces.length > 1 && lengthLines}
      <div>
        <Button
          kind="main"
          disabled={cable === undefined}
          onPress={() => cable && measure(workbench, lead, cable)}
        >
          Keep the measures
        </Button>
      </div>
    </>
  );
}
