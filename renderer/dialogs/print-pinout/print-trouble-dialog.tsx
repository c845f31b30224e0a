import { useMemo } from 'react';
import { serialize } from '../../../boards/document/serialize';
import type { Print } from '../../../boards/handover/order';
import { PAPERS } from '../../../boards/handover/page/paper';
import { idFrom } from '../../files/file-name';
import { Choice } from '../../look/choice';
import { useBuild } from '../../workbench';
import { FileChoices } from './file-choices';
import { PageView } from './page-view';
import { PrintWindow } from './print-window';
import { usePagePicture } from './use-page-picture';
import { PAPER_CHOICES, usePrinting } from './use-printing';

/** What was noticed and tried, what it may be and what to do next, as pages to print. */
export function PrintTroubleDialog({ onClose }: { readonly onClose: () => void }) {
  const build = useBuild();
  const { paper, setPaper, file, setFile, asked, setAsked, writing, change, save } = usePrinting(
    build.view,
    onClose,
  );
  const document = useMemo(() => serialize(build), [build]);
  const print = useMemo((): Print => ({ kind: 'trouble-sheet', options: { paper } }), [paper]);
  const picture = usePagePicture(document, print, asked);

  return (
    <PrintWindow
      title="Print the trouble sheet"
      saveLabel={`Save as ${file.format.toUpperCase()}…`}
      onSave={() => void save(document, print, `${idFrom(build.name, 'build')}-trouble-sheet`)}
      onClose={onClose}
      writing={writing}
      broken={picture.problem !== null}
    >
      <div className="print-choices">
        <Choice
          label="Paper"
          options={PAPER_CHOICES}
          chosen={paper}
          onChoose={(id) => change(() => setPaper(id))}
        />
        <FileChoices file={file} onChoose={setFile} />
      </div>
      <PageView
        picture={picture}
        shape={PAPERS[paper]}
        of="the trouble sheet"
        page={asked}
        onTurnTo={setAsked}
      />
    </PrintWindow>
  );
}
