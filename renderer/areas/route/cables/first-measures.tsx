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
  startOptions,
  THICKNESS_BOUNDS,
} from './cable-fields';
import { measure } from './cable-moves';

/** A lead that nobody has measured: what has to be known before a way can be found. */
export function FirstMeasures({ lead }: { readonly lead: Lead }) {
  const workbench = useWorkbench();
  const build = useBuild();
  const [thickness, setThickness] = useState<Mm>();
  const [length, setLength] = useState<Mm>();
  const [start, setStart] = useState('');
  const ready = thickness !== undefined && length !== undefined;
  return (
    <>
      <p>
        Nobody has measured it yet. Lay it out straight and measure from end to end; how thick it is, measure
        with its sleeve.
      </p>
      <div className="route-pair">
        <LengthLine label="Thickness, mm" value={thickness} bounds={THICKNESS_BOUNDS} onDone={setThickness} />
        <LengthLine label="Length, mm" value={length} bounds={CABLE_LENGTH_BOUNDS} onDone={setLength} />
      </div>
      {beginsAtPart(lead) && (
        <Choice label="Begins at" options={startOptions(build)} chosen={start} onChoose={setStart} />
      )}
      <div>
        <Button
          kind="main"
          disabled={!ready}
          onPress={() =>
            ready &&
            measure(workbench, lead, firstCable(lead, thickness, length, start === '' ? undefined : start))
          }
        >
          Keep the measures
        </Button>
      </div>
    </>
  );
}
