import { useState } from 'react';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { Choice } from '../../../look/choice';
import { LengthLine } from '../../../look/length-line';
import { TRAY_SIZE_BOUNDS } from '../../../words/tray-words';
import { useBuild, useWorkbench } from '../../../workbench';
import { firstSize, firstTray, GRIDS, type GridFor } from './first-tray';

/** What a tray is for, while the case has none, and how to begin one. */
export function NoTray() {
  const workbench = useWorkbench();
  const { outline } = useBuild().board;
  const [size, setSize] = useState(() => firstSize(outline));
  const [grid, setGrid] = useState<GridFor>(outline.formFactor ?? 'atx');
  const draw = () => {
    if (!doCommand(workbench, { name: 'replace-tray', args: { tray: firstTray(size, grid) } })) return;
    workbench.session.getState().select({ kind: 'nothing' });
  };
  return (
    <section className="no-tray" aria-labelledby="no-tray">
      <h2 id="no-tray">No tray is drawn yet</h2>
      <p>
        The tray is the sheet of metal that carries the board: once its openings, bays and paths are drawn
        with their lengths, each cable can be told its way, and whether it reaches.
      </p>
      <div className="no-tray-form">
        <LengthLine
          label="Width, mm"
          value={size.widthMm}
          bounds={TRAY_SIZE_BOUNDS}
          onDone={(widthMm) => widthMm !== undefined && setSize({ ...size, widthMm })}
        />
        <LengthLine
          label="Height, mm"
          value={size.heightMm}
          bounds={TRAY_SIZE_BOUNDS}
          onDone={(heightMm) => heightMm !== undefined && setSize({ ...size, heightMm })}
        />
        <Choice label="Standoffs for" options={GRIDS} chosen={grid} onChoose={setGrid} />
      </div>
      <p className="soft small">
        Measure the tray, or begin with this size. The board lies with its rear panel on the left, and
        standoffs where the published holes of the boards are; all of it can be moved.
      </p>
      <Button kind="main" onPress={draw}>
        Draw the tray
      </Button>
    </section>
  );
}
