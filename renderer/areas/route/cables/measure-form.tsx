import type { LeadCable, Run } from '../../../../boards/document/cable';
import type { Lead } from '../../../../boards/document/lead';
import { Button } from '../../../look/button';
import { Choice } from '../../../look/choice';
import { LengthLine } from '../../../look/length-line';
import { ReadLine } from '../../../look/read-line';
import { mmFigures } from '../../../words/length-words';
import { useBuild, useWorkbench } from '../../../workbench';
import {
  BEND_BOUNDS,
  CABLE_LENGTH_BOUNDS,
  lengthLabel,
  readSlack,
  startOptions,
  THICKNESS_BOUNDS,
} from './cable-fields';
import { measure } from './cable-moves';

/** What was measured of a cable, to be changed. */
export function MeasureForm({ lead }: { readonly lead: Lead }) {
  const workbench = useWorkbench();
  const build = useBuild();
  const { cable } = lead;
  if (cable === undefined) return null;
  const put = (changed: Partial<LeadCable>) => measure(workbench, lead, { ...cable, ...changed });
  const putRun = (run: Run, changed: Partial<Run>) =>
    put({ runs: cable.runs.map((each) => (each === run ? { ...each, ...changed } : each)) });
  const { bendRadiusMm: _, ...unbent } = cable;
  const { start: __, ...unbegun } = cable;
  return (
    <details className="route-fold">
      <summary>Measures</summary>
      <div className="route-fold-body">
        <div className="route-pair">
          <LengthLine
            label="Thickness, mm"
            value={cable.diameterMm}
            bounds={THICKNESS_BOUNDS}
            onDone={(diameterMm) => diameterMm !== undefined && put({ diameterMm })}
          />
          <LengthLine
            label="Bends to a radius of, mm"
            value={cable.bendRadiusMm}
            bounds={BEND_BOUNDS}
            mayBeEmpty
            onDone={(bendRadiusMm) =>
              bendRadiusMm === undefined ? measure(workbench, lead, unbent) : put({ bendRadiusMm })
            }
          />
        </div>
        <ReadLine<number>
          label="Left over at each end, mm"
          shown={mmFigures(cable.slackMm)}
          read={readSlack}
          onDone={(slackMm) => put({ slackMm })}
        />
        {cable.runs.some(({ from }) => from === undefined) && (
          <Choice
            label="Begins at"
            options={startOptions(build)}
            chosen={cable.start ?? ''}
            onChoose={(start) => (start === '' ? measure(workbench, lead, unbegun) : put({ start }))}
          />
        )}
        {cable.runs.map((run) => (
          <LengthLine
            key={run.to}
            label={lengthLabel(build, lead, run)}
            value={run.lengthMm}
            bounds={CABLE_LENGTH_BOUNDS}
            onDone={(lengthMm) => lengthMm !== undefined && putRun(run, { lengthMm })}
          />
        ))}
        <div>
          <Button onPress={() => measure(workbench, lead, null)}>Forget the measures</Button>
        </div>
      </div>
    </details>
  );
}
