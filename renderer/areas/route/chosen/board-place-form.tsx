import { SIDES, type Side } from '../../../../boards/document/connector';
import type { BoardPlace } from '../../../../boards/document/tray';
import { doCommand } from '../../../do-command';
import { Choice } from '../../../look/choice';
import { useWorkbench } from '../../../workbench';
import { PlaceFields } from './area-fields';

const REARS: readonly { readonly id: Side; readonly label: string }[] = SIDES.map((id) => ({
  id,
  label: `at the ${id}`,
}));

/** Where the board lies: the corner that all published sizes share, and which way its rear edge looks. */
export function BoardPlaceForm({ board }: { readonly board: BoardPlace }) {
  const workbench = useWorkbench();
  const put = (changed: Partial<BoardPlace>) =>
    doCommand(workbench, { name: 'lay-board', args: { board: { ...board, ...changed } } });
  return (
    <>
      <p className="soft small">
        All published sizes of boards share the corner where the rear edge meets the right one, so this place
        serves every board of the case.
      </p>
      <PlaceFields what="Corner" at={board} onChange={put} />
      <Choice label="Rear panel" options={REARS} chosen={board.rear} onChoose={(rear) => put({ rear })} />
    </>
  );
}
