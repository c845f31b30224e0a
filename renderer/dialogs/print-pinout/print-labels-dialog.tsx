import { useMemo, useState } from 'react';
import { serialize } from '../../../boards/document/serialize';
import {
  LABEL_SIZES,
  type LabelOptions,
  type LabelStyle,
} from '../../../boards/handover/cables/label-options';
import { labelTexts } from '../../../boards/handover/cables/label-texts';
import type { Print } from '../../../boards/handover/order';
import { PAPERS } from '../../../boards/handover/page/paper';
import { idFrom } from '../../files/file-name';
import { Choice } from '../../look/choice';
import { LengthLine } from '../../look/length-line';
import { counted } from '../../words/list-words';
import { useBuild } from '../../workbench';
import { FileChoices } from './file-choices';
import { PageView } from './page-view';
import { PrintWindow } from './print-window';
import { usePagePicture } from './use-page-picture';
import { PAPER_CHOICES, usePrinting } from './use-printing';

const STYLES: readonly { readonly id: LabelStyle; readonly label: string }[] = [
  { id: 'flat', label: 'Flat, to be stuck on' },
  { id: 'flag', label: 'Flag, folded round the cable' },
];

function bounds({ least, most }: { readonly least: number; readonly most: number }) {
  return { leastMm: least, mostMm: most };
}

/** Labels for both ends of each cable as sheets to print: their size, their shape, and off. */
export function PrintLabelsDialog({ onClose }: { readonly onClose: () => void }) {
  const build = useBuild();
  const { paper, setPaper, file, setFile, asked, setAsked, writing, change, save } = usePrinting(
    build.view,
    onClose,
  );
  const [shape, setShape] = useState<Omit<LabelOptions, 'paper'>>({
    widthMm: LABEL_SIZES.widthMm.usual,
    heightMm: LABEL_SIZES.heightMm.usual,
    style: 'flag',
  });
  const put = (changed: Partial<typeof shape>) =>
    change(() => setShape((before) => ({ ...before, ...changed })));
  const document = useMemo(() => serialize(build), [build]);
  const print = useMemo((): Print => ({ kind: 'labels', options: { paper, ...shape } }), [paper, shape]);
  const picture = usePagePicture(document, print, asked);
  const labels = useMemo(() => labelTexts(build).length, [build]);

  return (
    <PrintWindow
      title="Print the cable labels"
      saveLabel={`Save as ${file.format.toUpperCase()}…`}
      onSave={() => void save(document, print, `${idFrom(build.name, 'build')}-cable-labels`)}
      onClose={onClose}
      writing={writing}
      missing={labels === 0 ? 'There is no cable with two ends in this build.' : undefined}
      broken={picture.problem !== null}
    >
      <div className="print-choices">
        <p className="small soft">{counted(labels, 'label')}: both ends of each cable.</p>
        <Choice
          label="Paper"
          options={PAPER_CHOICES}
          chosen={paper}
          onChoose={(id) => change(() => setPaper(id))}
        />
        <Choice label="Shape" options={STYLES} chosen={shape.style} onChoose={(style) => put({ style })} />
        <LengthLine
          label="Width of a label, mm"
          value={shape.widthMm}
          bounds={bounds(LABEL_SIZES.widthMm)}
          onDone={(widthMm) => widthMm !== undefined && put({ widthMm })}
        />
        <LengthLine
          label="Height of a label, mm"
          value={shape.heightMm}
          bounds={bounds(LABEL_SIZES.heightMm)}
          onDone={(heightMm) => heightMm !== undefined && put({ heightMm })}
        />
        <FileChoices file={file} onChoose={setFile} />
      </div>
      <PageView
        picture={picture}
        shape={PAPERS[paper]}
        of="the cable labels"
        page={asked}
        onTurnTo={setAsked}
      />
    </PrintWindow>
  );
}
