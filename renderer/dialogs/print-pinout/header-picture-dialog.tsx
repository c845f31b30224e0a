import { useMemo, useState } from 'react';
import { connectorOf } from '../../../boards/document/lookup';
import { idFrom } from '../../files/file-name';
import { useBuild, useWorkbench } from '../../workbench';
import { FileChoices, usualFile } from './file-choices';
import { LyingChoices } from './lying-choices';
import { PageView } from './page-view';
import { PrintWindow } from './print-window';
import { savePaper } from './save-paper';
import { usePagePicture } from './use-page-picture';

/** While the picture is not drawn yet: about what a header takes. */
const USUAL_SHAPE = { widthMm: 100, heightMm: 110 };

interface HeaderPictureDialogProps {
  readonly connector: string;
  readonly onClose: () => void;
}

/** One header with its plugs as a picture: how the board lies, as which file, and off. */
export function HeaderPictureDialog({ connector: id, onClose }: HeaderPictureDialogProps) {
  const workbench = useWorkbench();
  const build = useBuild();
  const [lying, setLying] = useState(build.view);
  const [file, setFile] = useState(usualFile('svg'));
  const [writing, setWriting] = useState(false);
  const document = useMemo(() => JSON.stringify(build), [build]);
  const print = useMemo(
    () => ({ kind: 'header', options: { ...lying, connector: id } }) as const,
    [lying, id],
  );
  const picture = usePagePicture(document, print, 1);
  const header = connectorOf(build.board, id);
  const name = header?.print || header?.title || id;

  const save = async () => {
    const { format, scale } = file;
    const suggested = `${idFrom(name, 'header')}-picture`;
    const order = { document, print, format, page: null, scale };
    if (await savePaper(workbench, order, suggested, setWriting)) onClose();
  };

  return (
    <PrintWindow
      title={`Save a picture of ${name}`}
      saveLabel={`Save as ${file.format.toUpperCase()}…`}
      onSave={() => void save()}
      onClose={onClose}
      writing={writing}
      broken={picture.problem !== null}
    >
      <div className="print-choices">
        <LyingChoices lying={lying} onChoose={setLying} />
        <FileChoices file={file} onChoose={setFile} formats={['svg', 'png']} paged={false} />
      </div>
      <PageView picture={picture} shape={USUAL_SHAPE} of={name} page={1} onTurnTo={() => undefined} />
    </PrintWindow>
  );
}
