import { useState } from 'react';
import type { Build } from '../../../boards/document/build';
import type { Print } from '../../../boards/handover/order';
import { PAPER_IDS, PAPERS } from '../../../boards/handover/page/paper';
import { useWorkbench } from '../../workbench';
import { usualFile } from './file-choices';
import { savePaper } from './save-paper';

export const PAPER_CHOICES = PAPER_IDS.map((id) => ({ id, label: PAPERS[id].name }));

/** What every paper asks for: how it lies, its size, the file, and the page that is shown. */
export function usePrinting(view: Build['view'], onClose: () => void) {
  const workbench = useWorkbench();
  const [lying, setLying] = useState(view);
  const [paper, setPaper] = useState<keyof typeof PAPERS>('a4');
  const [file, setFile] = useState(usualFile('pdf'));
  const [asked, setAsked] = useState(1);
  const [writing, setWriting] = useState(false);
  return {
    lying,
    setLying,
    paper,
    setPaper,
    file,
    setFile,
    asked,
    setAsked,
    writing,
    /** Another choice shows the first page again. */
    change: (made: () => void) => {
      made();
      setAsked(1);
    },
    save: async (document: string, print: Print, name: string) => {
      const { format, scale } = file;
      const page = format !== 'pdf' && file.onePage ? asked : null;
      if (await savePaper(workbench, { document, print, format, page, scale }, name, setWriting)) onClose();
    },
  };
}
