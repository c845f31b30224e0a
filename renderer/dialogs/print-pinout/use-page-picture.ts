import { useEffect, useState } from 'react';
import type { Print } from '../../../boards/handover/order';
import type { PaperProblem } from '../../../boards/handover/paper-problem';
import { useWorkbench } from '../../workbench';

/** A page as it would be printed: the address of its picture, or why there is none. */
export interface PagePicture {
  readonly address: string | null;
  readonly pages: number;
  readonly problem: PaperProblem | null;
  /** What is shown is not yet what was asked for last. */
  readonly drawing: boolean;
}

const NOTHING: PagePicture = { address: null, pages: 0, problem: null, drawing: true };
/** Choices that follow each other at once are drawn once. */
const PAUSE_MS = 120;

/** Draws a page anew whenever anything that it depends on changes; the last one stays until then. */
export function usePagePicture(document: string, print: Print, page: number): PagePicture {
  const { host } = useWorkbench();
  const [picture, setPicture] = useState(NOTHING);
  useEffect(() => {
    let wanted = true;
    setPicture((before) => ({ ...before, drawing: true }));
    const draw = async () => {
      const drawn = await host.drawPaper({ document, print, page });
      if (!wanted) return;
      if (!drawn.ok) setPicture({ address: null, pages: 0, problem: drawn.problem, drawing: false });
      else {
        const { svg, pages } = drawn.value;
        const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
        setPicture({ address, pages, problem: null, drawing: false });
      }
    };
    const timer = setTimeout(() => void draw(), PAUSE_MS);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [host, document, print, page]);
  const { address } = picture;
  useEffect(() => {
    if (address === null) return;
    return () => URL.revokeObjectURL(address);
  }, [address]);
  return picture;
}
