import { LIMITS } from '../../../../boards/document/limits';
import { doCommand } from '../../../do-command';
import { TextLine } from '../../../look/text-line';
import { useBuild, useWorkbench } from '../../../workbench';
import { HolesTable } from './holes-table';

/** What is known of the board as a whole: its name, its holes, notes. */
export function BoardForm() {
  const workbench = useWorkbench();
  const { board } = useBuild();
  return (
    <div className="form">
      <h2>The board</h2>
      <TextLine
        label="Name of the board"
        value={board.name}
        maxLength={LIMITS.textLength}
        onDone={(name) => doCommand(workbench, { name: 'rename-board', args: { name } })}
      />
      <TextLine
        label="Notes of the board"
        value={board.notes ?? ''}
        maxLength={LIMITS.noteLength}
        area
        onDone={(notes) => doCommand(workbench, { name: 'note-board', args: { notes } })}
      />
      <HolesTable />
    </div>
  );
}
