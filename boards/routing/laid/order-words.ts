import type { Build } from '../../document/build';
import { connectorName, unitName } from '../../document/names';
import { placeName } from '../../document/place-names';
import { lengthWords } from '../fill/length-words';
import type { LayingReason, LayingStage } from './order-of-laying';

/** What orders of laying rest on where no place says anything. */
export const ORDER_SOURCE =
  'common practice, no source: supply of the processor, of the board, of a card, then drives, then panel, ports and sound, fans last; stiff cables before thin ones';

export const STAGE_WORDS: Readonly<Record<LayingStage, string>> = {
  'before-board': 'Before the board goes in',
  'before-card': 'Before the graphics card',
  'before-panel': 'Before the side panel behind the tray',
  last: 'Last, on the front',
};

/** Why a cable has its place in the order. */
export function layingReasonWords(build: Build, reason: LayingReason): string {
  switch (reason.code) {
    case 'under-board':
      return `The board covers ${nameOf(build, reason.place)}.`;
    case 'partly-under-board':
      return `The board covers part of ${nameOf(build, reason.place)}.`;
    case 'narrow-strip':
      return `${nameOf(build, reason.opening)} lies in a strip of ${lengthWords(reason.stripMm)} beside the board, too narrow for a hand. Lead it through now, and plug it in later.`;
    case 'at-narrow-edge':
      return `${connectorName(build, reason.connector)} is at the edge of the board along a strip of ${lengthWords(reason.stripMm)}. Lead its end there now.`;
    case 'cpu-power':
      return 'The supply of the processor ends where board and cooler soon are in the way (common practice).';
    case 'beside-card':
      return `${unitName(build, reason.card)} hides ${connectorName(build, reason.connector)}.`;
    case 'behind-tray':
      return 'It lies behind the tray.';
    case 'in-sight':
      return 'It lies on the front all the way.';
  }
}

function nameOf({ case: { tray } }: Build, id: string): string {
  return tray === undefined ? id : placeName(tray, id);
}
