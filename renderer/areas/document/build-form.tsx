import { Download, Library } from 'lucide-react';
import { LIMITS } from '../../../boards/document/limits';
import { useAction } from '../../actions/actions';
import { doCommand } from '../../do-command';
import { saveSheetAs } from '../../files/save-build';
import { Button } from '../../look/button';
import { TextLine } from '../../look/text-line';
import { useBuild, useWorkbench } from '../../workbench';

/** Where the page has the form, to be scrolled to. */
export const NAMES_AND_NOTES = 'names-and-notes';

/** The names of machine, board and case, and notes; the sheets as files of their own. */
export function BuildForm() {
  const workbench = useWorkbench();
  const build = useBuild();
  return (
    <div className="form">
      <h2 id={NAMES_AND_NOTES}>Names and notes</h2>
      <p className="soft">
        Choose a connector or a lead on the left to see and change what is known of it. What you do not know,
        leave unknown: the checks will say “look again” there instead of guessing.
      </p>
      <TextLine
        label="Name of the machine"
        value={build.name}
        maxLength={LIMITS.textLength}
        onDone={(name) => doCommand(workbench, { name: 'rename-build', args: { name } })}
      />
      <TextLine
        label="Notes"
        value={build.notes ?? ''}
        maxLength={LIMITS.noteLength}
        area
        onDone={(notes) => doCommand(workbench, { name: 'note-build', args: { notes } })}
      />
      <TextLine
        label="Name of the case"
        value={build.case.name}
        maxLength={LIMITS.textLength}
        onDone={(name) =>
          doCommand(workbench, { name: 'replace-case', args: { case: { ...build.case, name } } })
        }
      />
      <div className="form-doings">
        <KeepButton id="board.keep" />
        <KeepButton id="board.keep-case" />
      </div>
      <div className="form-doings">
        <Button onPress={() => void saveSheetAs(workbench, build.board)}>
          <Download size={16} aria-hidden="true" />
          Save the board sheet as a file…
        </Button>
        <Button onPress={() => void saveSheetAs(workbench, build.case)}>
          <Download size={16} aria-hidden="true" />
          Save the case sheet as a file…
        </Button>
      </div>
    </div>
  );
}

/** A sheet of this build for later ones. */
function KeepButton({ id }: { readonly id: string }) {
  const { label, run } = useAction(id);
  return (
    <Button onPress={() => void run()}>
      <Library size={16} aria-hidden="true" />
      {label}
    </Button>
  );
}
