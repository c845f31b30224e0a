import type { BoardSheet } from '../../../boards/document/board-sheet';
import { serialize } from '../../../boards/document/serialize';
import type { PaperFormat } from '../../../boards/handover/order';
import type { PaperProblem } from '../../../boards/handover/paper-problem';
import { paperProblemWords } from '../../../boards/handover/paper-problem-words';
import type { PinoutOptions } from '../../../boards/handover/pinout/options';
import type { SaveProblem } from '../../../boards/host';
import { chooseFilePlace } from '../../files/choose-place';
import { idFrom } from '../../files/file-name';
import type { Message } from '../../store/dialog';
import { saveProblemWords } from '../../words/host-words';
import { counted } from '../../words/list-words';
import type { Workbench } from '../../workbench';

export interface PinoutOrder {
  readonly board: BoardSheet;
  readonly options: PinoutOptions;
  readonly format: PaperFormat;
  readonly page: number | null;
  readonly scale: number;
}

/** Asks where the pinout is to go and has it written there. True once it is on disk. */
export async function savePinout(
  workbench: Workbench,
  order: PinoutOrder,
  onWriting: (writing: boolean) => void,
): Promise<boolean> {
  const { board, format } = order;
  const place = await chooseFilePlace(workbench, `${idFrom(board.name, 'board')}-pinout.${format}`, format);
  if (place === null) return false;
  onWriting(true);
  const { options, page, scale } = order;
  const saved = await workbench.host.savePaper({
    handle: place.handle,
    document: serialize(board),
    print: { kind: 'pinout', options },
    format,
    page,
    scale,
  });
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

function problemWords(problem: SaveProblem | PaperProblem, name: string): Message {
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
