import { addTurns, type Turn } from '../../../../boards/base/units';
import type { Build } from '../../../../boards/document/build';

const TURN_WORDS: Readonly<Record<Turn, string>> = {
  0: '',
  90: ', turned a quarter to the right',
  180: ', turned by half',
  270: ', turned a quarter to the left',
};

/** "Drawn as it lies on the board, seen from above, turned by half.": which way a header is shown. */
export function lyingWords(turn: Turn, view: Build['view']): string {
  if (view.mirrored)
    return 'Drawn in mirror image, as the drawing of the board is now. The view can be mirrored back in the View menu.';
  return `Drawn as it lies on the board, seen from above${TURN_WORDS[addTurns(turn, view.turn)]}.`;
}
