import { useEffect, useState } from 'react';
import type { Build } from '../../../boards/document/build';
import { USUAL_ROOMS } from '../../../boards/drawing/block';
import { measureByTable } from '../../../boards/drawing/measure';
import { rememberedBlock } from '../../canvas/scene/block-memo';

/** A board with more connectors than this takes longer to lay out than a person should wait. */
const MANY_CONNECTORS = 200;
/** So many are laid out in one go. */
const AT_ONCE = 60;

/**
 * Whether the board is drawn yet. A very large one comes after the lists: it is laid out in pieces, between which
 * the window answers, and what was laid out is remembered for the drawing.
 */
export function useDrawn(build: Build): boolean {
  const [{ board, view }] = useState(build);
  const { connectors } = board;
  const [laidOut, setLaidOut] = useState(connectors.length <= MANY_CONNECTORS);
  useEffect(() => {
    if (laidOut) return;
    let at = 0;
    const layOut = () => {
      for (const connector of connectors.slice(at, at + AT_ONCE))
        rememberedBlock(connector, view, USUAL_ROOMS, measureByTable);
      at += AT_ONCE;
      if (at < connectors.length) timer = setTimeout(layOut);
      else setLaidOut(true);
    };
    let timer = setTimeout(layOut);
    return () => clearTimeout(timer);
  }, [laidOut, connectors, view]);
  return laidOut;
}
