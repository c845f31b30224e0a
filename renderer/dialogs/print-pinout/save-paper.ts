import type { PaperFormat, Print } from '../../../boards/handover/order';
import type { PaperProblem } from '../../../boards/handover/paper-problem';
import { paperProblemWords } from '../../../boards/handover/paper-problem-words';
import type { SaveProblem } from '../../../boards/host';
import { chooseFilePlace } from '../../files/choose-place';
import type { Message } from '../../store/dialog';
import { saveProblemWords } from '../../words/host-words';
import { counted } from '../../words/list-words';
import type { Workbench } from '../../workbench';

export interface PaperToSave {
  /** The build or the board sheet, as its file would be. */
  readonly document: string;
  readonly print: Print;
  readonly format: PaperFormat;
  readonly page: number | null;
  readonly scale: number;
}

/**
 * Asks where a paper is to go and has it written there. True once it is on disk.
 *
 * @param suggested name of the file, without its ending
 */
export async function savePaper(
  workbench: Workbench,
  order: PaperToSave,
  suggested: string,
  onWriting: (writing: boolean) => void,
): Promise<boolean> {
  const { format } = order;
  const place = await chooseFilePlace(workbench, `${suggested}.${format}`, format);
  if (place === null) return false;
  onWriting(true);
  const saved = await workbench.host.savePaper({ ...order, handle: place.handle });
  onWriting(false);
  const { tell, openDialog } = workbench.session.getState();
  if (saved.ok) {
    tell(`Saved ${saved.value.name} in ${saved.value.folder}: ${counted(saved.value.pages, 'page')}.`);
    return true;
  }
  if (saved.problem.code === 'stopped') tell(paperProblemWords(saved.problem).line);
  else openDialog({ kind: 'message', message: problemWords(saved.problem, place.name) });
  return false;
}

/** Why a paper or a list was not written. */
export function problemWords(problem: SaveProblem | PaperProblem, name: string): Message {
  switch (problem.code) {
    case 'no-such-connector':
    case 'no-such-page':
    case 'too-many-pages':
    case 'too-many-pixels':
    case 'stopped':
    case 'not-a-board': {
      const { line, advice } = paperProblemWords(problem);
      return { title: `“${name}” was not written`, lines: [line], advice };
    }
    default:
      return saveProblemWords(problem);
  }
}
