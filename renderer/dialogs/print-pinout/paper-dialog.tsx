import { type ReactNode, useMemo, useState } from 'react';
import type { Print } from '../../../boards/handover/order';
import { PAPER_IDS, PAPERS } from '../../../boards/handover/page/paper';
import { Choice } from '../../look/choice';
import { useWorkbench } from '../../workbench';
import { FileChoices, usualFile } from './file-choices';
import { PageView } from './page-view';
import { PrintWindow } from './print-window';
import { savePaper } from './save-paper';
import { usePagePicture } from './use-page-picture';

const PAPER_CHOICES = PAPER_IDS.map((id) => ({ id, label: PAPERS[id].name }));

/** The size of paper, by its name. */
export type PaperSize = (typeof PAPER_IDS)[number];

interface PaperDialogProps {
  /** What is printed, as "Print" goes before it: "the bench sheet". */
  readonly of: string;
  /** The build or the board sheet, as its file would be. */
  readonly document: string;
  /** What is asked for on a size of paper; another function shows the first page again. */
  readonly printOn: (paper: PaperSize) => Print;
  /** Name of the file, without its ending. */
  readonly name: string;
  /** What keeps it from being saved, in a sentence. */
  readonly missing?: string | undefined;
  readonly onClose: () => void;
  /** What may be chosen besides the paper and the file. */
  readonly children?: ReactNode;
}

/** One of the papers as pages to print: on what, what is on it, as which file, and off. */
export function PaperDialog(props: PaperDialogProps) {
  const { of, document, printOn, name, missing, onClose, children } = props;
  const workbench = useWorkbench();
  const [paper, setPaper] = useState<PaperSize>('a4');
  const [file, setFile] = useState(usualFile('pdf'));
  const [writing, setWriting] = useState(false);
  const print = useMemo(() => printOn(paper), [printOn, paper]);
  const [turned, setTurned] = useState({ print, to: 1 });
  const asked = turned.print === print ? turned.to : 1;
  const picture = usePagePicture(document, print, asked);

  const save = async () => {
    const { format, scale } = file;
    const page = format !== 'pdf' && file.onePage ? asked : null;
    if (await savePaper(workbench, { document, print, format, page, scale }, name, setWriting)) onClose();
  };

  return (
    <PrintWindow
      title={`Print ${of}`}
      saveLabel={`Save as ${file.format.toUpperCase()}…`}
      onSave={() => void save()}
      onClose={onClose}
      writing={writing}
      missing={missing}
      broken={picture.problem !== null}
    >
      <div className="print-choices">
        <Choice label="Paper" options={PAPER_CHOICES} chosen={paper} onChoose={setPaper} />
        {children}
        <FileChoices file={file} onChoose={setFile} />
      </div>
      <PageView
        picture={picture}
        shape={PAPERS[paper]}
        of={of}
        page={asked}
        onTurnTo={(to) => setTurned({ print, to })}
      />
    </PrintWindow>
  );
}
