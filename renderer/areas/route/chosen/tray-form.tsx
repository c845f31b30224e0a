import { useState } from 'react';
import type { Mm } from '../../../../boards/base/units';
import type { Tray } from '../../../../boards/document/tray';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { Choice } from '../../../look/choice';
import { LengthLine } from '../../../look/length-line';
import { TRAY_SIZE_BOUNDS } from '../../../words/tray-words';
import { useBuild, useWorkbench } from '../../../workbench';
import { FIRST_BOARD_PLACE, GRIDS, type GridFor, gridFor } from '../tray/first-tray';
import { SizeFields } from './area-fields';

/** The tray as a whole: how large it is, the room behind it, its board and its standoffs. */
export function TrayForm({ tray }: { readonly tray: Tray }) {
  const workbench = useWorkbench();
  const { widthMm, heightMm, behindMm = null } = tray;
  const size = (changed: { readonly widthMm?: Mm; readonly heightMm?: Mm; readonly behindMm?: Mm | null }) =>
    doCommand(workbench, { name: 'size-tray', args: { widthMm, heightMm, behindMm, ...changed } });
  return (
    <>
      <p className="soft small">Choose a place or a path on the map or on the left to change it.</p>
      <SizeFields size={tray} onChange={size} />
      <LengthLine
        label="Room behind it, mm"
        value={tray.behindMm}
        bounds={TRAY_SIZE_BOUNDS}
        mayBeEmpty
        onDone={(mm) => size({ behindMm: mm ?? null })}
      />
      {tray.board === undefined ? (
        <div className="form-doings">
          <Button
            onPress={() => doCommand(workbench, { name: 'lay-board', args: { board: FIRST_BOARD_PLACE } })}
          >
            Lay the board on it
          </Button>
        </div>
      ) : (
        <AddStandoffs tray={tray} board={tray.board} />
      )}
      <div className="form-doings">
        <Button onPress={() => doCommand(workbench, { name: 'remove-tray', args: {} })}>
          Remove the tray
        </Button>
      </div>
    </>
  );
}

interface AddStandoffsProps {
  readonly tray: Tray;
  readonly board: NonNullable<Tray['board']>;
}

const SIZES = GRIDS.filter(({ id }) => id !== 'none');

/** The published places of standoffs, as many as the tray does not have yet. */
function AddStandoffs({ tray, board }: AddStandoffsProps) {
  const workbench = useWorkbench();
  const { formFactor } = useBuild().board.outline;
  const [grid, setGrid] = useState<GridFor>(formFactor ?? 'atx');
  const add = () => {
    const standoffs = gridFor(grid, tray, board);
    if (standoffs.length === 0) {
      workbench.session
        .getState()
        .tell('The tray has all the published places of standoffs for these boards.');
      return;
    }
    const places = standoffs.map((place) => ({ what: 'standoff' as const, place }));
    doCommand(workbench, { name: 'add-to-tray', args: { places, paths: [] } });
  };
  return (
    <div className="route-with-button">
      <Choice label="Published standoffs for" options={SIZES} chosen={grid} onChoose={setGrid} />
      <Button onPress={add}>Add</Button>
    </div>
  );
}
