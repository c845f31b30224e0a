import { useMemo, useState } from 'react';
import { serialize } from '../../../boards/document/serialize';
import { PAPERS } from '../../../boards/handover/page/paper';
import { idFrom } from '../../files/file-name';
import { Choice } from '../../look/choice';
import { useBuild } from '../../workbench';
import { ConnectorList } from './connector-list';
import { FileChoices } from './file-choices';
import { LyingChoices } from './lying-choices';
import { PageView } from './page-view';
import { PrintWindow } from './print-window';
import { usePagePicture } from './use-page-picture';
import { PAPER_CHOICES, usePrinting } from './use-printing';

/** The pinout of the board as pages to print: how they lie, which connectors, what they look like, and off. */
export function PrintPinoutDialog({ onClose }: { readonly onClose: () => void }) {
  const { board, view } = useBuild();
  // As the board lies in the Wire area: that is how it lies before the person.
  const { lying, setLying, paper, setPaper, file, setFile, asked, setAsked, writing, change, save } =
    usePrinting(view, onClose);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(
    () => new Set(board.connectors.map(({ id }) => id)),
  );

  const document = useMemo(() => serialize(board), [board]);
  const print = useMemo(() => {
    const ids = board.connectors.map(({ id }) => id).filter((id) => chosen.has(id));
    // Nothing chosen shows the first page alone, and cannot be saved.
    const connectors = ids.length === board.connectors.length || ids.length === 0 ? null : ids;
    return { kind: 'pinout', options: { paper, ...lying, connectors } } as const;
  }, [board, chosen, paper, lying]);
  const picture = usePagePicture(document, print, asked);
  const nothing = chosen.size === 0 && board.connectors.length > 0;

  return (
    <PrintWindow
      title="Print the pinout"
      saveLabel={`Save as ${file.format.toUpperCase()}…`}
      onSave={() => void save(document, print, `${idFrom(board.name, 'board')}-pinout`)}
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
