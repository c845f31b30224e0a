import { useMemo } from 'react';
import type { Print } from '../../../boards/handover/order';
import { idFrom } from '../../files/file-name';
import { useBuild } from '../../workbench';
import { PaperDialog, type PaperSize } from './paper-dialog';

const printOn = (paper: PaperSize): Print => ({ kind: 'trouble-sheet', options: { paper } });

/** What was noticed and tried, what it may be and what to do next, as pages to print. */
export function PrintTroubleDialog({ onClose }: { readonly onClose: () => void }) {
  const build = useBuild();
  const document = useMemo(() => JSON.stringify(build), [build]);
  return (
    <PaperDialog
      of="the trouble sheet"
      document={document}
      printOn={printOn}
      name={`${idFrom(build.name, 'build')}-trouble-sheet`}
      onClose={onClose}
    />
  );
}
