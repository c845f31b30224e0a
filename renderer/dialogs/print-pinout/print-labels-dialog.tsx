import { useCallback, useMemo, useState } from 'react';
import {
  LABEL_SIZES,
  type LabelOptions,
  type LabelStyle,
} from '../../../boards/handover/cables/label-options';
import { labelTexts } from '../../../boards/handover/cables/label-texts';
import type { Print } from '../../../boards/handover/order';
import { idFrom } from '../../files/file-name';
import { Choice } from '../../look/choice';
import { LengthLine } from '../../look/length-line';
import { counted } from '../../words/list-words';
import { useBuild } from '../../workbench';
import { PaperDialog, type PaperSize } from './paper-dialog';

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
  const [shape, setShape] = useState<Omit<LabelOptions, 'paper'>>({
    widthMm: LABEL_SIZES.widthMm.usual,
    heightMm: LABEL_SIZES.heightMm.usual,
    style: 'flag',
  });
  const put = (changed: Partial<typeof shape>) => setShape((before) => ({ ...before, ...changed }));
  const document = useMemo(() => JSON.stringify(build), [build]);
  const printOn = useCallback(
    (paper: PaperSize): Print => ({ kind: 'labels', options: { paper, ...shape } }),
    [shape],
  );
  const labels = useMemo(() => labelTexts(build).length, [build]);
  return (
    <PaperDialog
      of="the cable labels"
      document={document}
      printOn={printOn}
      name={`${idFrom(build.name, 'build')}-cable-labels`}
      missing={labels === 0 ? 'There is no cable with two ends in this build.' : undefined}
      onClose={onClose}
    >
      <p className="small soft">{counted(labels, 'label')}: both ends of each cable.</p>
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
    </PaperDialog>
  );
}
