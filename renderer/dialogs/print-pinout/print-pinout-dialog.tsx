import { useMemo, useState } from 'react';
import { serialize } from '../../../boards/document/serialize';
import { PAPER_IDS, PAPERS } from '../../../boards/handover/page/paper';
import type { PinoutOptions } from '../../../boards/handover/pinout/options';
import { idFrom } from '../../files/file-name';
import { Choice } from '../../look/choice';
import { useBuild, useWorkbench } from '../../workbench';
import { ConnectorList } from './connector-list';
import { FileChoices, usualFile } from './file-choices';
import { LyingChoices } from './lying-choices';
import { PageView } from './page-view';
import { PrintWindow } from './print-window';
import { savePaper } from './save-paper';
import { usePagePicture } from './use-page-picture';

const PAPER_CHOICES = PAPER_IDS.map((id) => ({ id, label: PAPERS[id].name }));

/** The pinout of the board as pages to print: how they lie, which connectors, what they look like, and off. */
export function PrintPinoutDialog({ onClose }: { readonly onClose: () => void }) {
  const workbench = useWorkbench();
  const { board, view } = useBuild();
  // As the board lies in the Wire area: that is how it lies before the person.
  const [lying, setLying] = useState(view);
  const [paper, setPaper] = useState<PinoutOptions['paper']>('a4');
  const [chosen, setChosen] = useState<ReadonlySet<string>>(
    () => new Set(board.connectors.map(({ id }) => id)),
  );
  const [file, setFile] = useState(usualFile('pdf'));
  const [asked, setAsked] = useState(1);
  const [writing, setWriting] = useState(false);

  const document = useMemo(() => serialize(board), [board]);
  const print = useMemo(() => {
    const ids = board.connectors.map(({ id }) => id).filter((id) => chosen.has(id));
    // Nothing chosen shows the first page alone, and cannot be saved.
    const connectors = ids.length === board.connectors.length || ids.length === 0 ? null : ids;
    return { kind: 'pinout', options: { paper, ...lying, connectors } } as const;
  }, [board, chosen, paper, lying]);
  const change = (made: () => void) => {
    made();
    setAsked(1);
  };
  const picture = usePagePicture(document, print, asked);
  const nothing = chosen.size === 0 && board.connectors.length > 0;

  const save = async () => {
    const { format, scale } = file;
    const page = format !== 'pdf' && file.onePage ? asked : null;
    const name = `${idFrom(board.name, 'board')}-pinout`;
    if (await savePaper(workbench, { document, print, format, page, scale }, name, setWriting)) onClose();
  };

  return (
    <PrintWindow
      title="Print the pinout"
      saveLabel={`Save as ${file.format.toUpperCase()}…`}
      onSave={() => void save()}
      onClose={onClose}
      writing={writing}
      missing={nothing ? 'Choose at least one connector.' : undefined}
      broken={picture.problem !== null}
    >
      <div className="print-choices">
        <Choice
          label="Paper"
          options={PAPER_CHOICES}
          chosen={paper}
          onChoose={(id) => change(() => setPaper(id))}
        />
        <LyingChoices lying={lying} onChoose={(lies) => change(() => setLying(lies))} />
        <ConnectorList
          connectors={board.connectors}
          chosen={chosen}
          onChoose={(ids) => change(() => setChosen(ids))}
        />
        <FileChoices file={file} onChoose={setFile} />
      </div>
      <PageView picture={picture} shape={PAPERS[paper]} of="the pinout" page={asked} onTurnTo={setAsked} />
    </PrintWindow>
  );
}
