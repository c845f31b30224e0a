import type { Mm } from '../../../../boards/base/units';
import type { FormFactor, Outline } from '../../../../boards/document/outline';
import type { BoardPlace, Standoff, Tray } from '../../../../boards/document/tray';
import { trayPlaces } from '../../../../boards/document/tray-places';
import { FORM_FACTOR_ENTRIES, unsureHoles } from '../../../../boards/library/form-factors';
import { standoffGrid } from '../../../../boards/routing/case/standoff-grid';
import { freshId } from '../../../files/file-name';

/** Room beside a board to begin with: before and above it, and beyond it for openings, drives and supply. */
const BEFORE: Mm = 14;
const ABOVE: Mm = 40;
const BEYOND_FRONT: Mm = 160;
const BEYOND_BELOW: Mm = 130;

/** A case on its feet, with the rear panel on the left: how boards lie in most cases (common practice, no source). */
export const FIRST_BOARD_PLACE: BoardPlace = { xMm: BEFORE, yMm: ABOVE, rear: 'left' };

/** How large a tray is drawn at first, for a board as it is: to be measured. */
export function firstSize({ widthMm, depthMm, rear = 'top' }: Outline): { widthMm: Mm; heightMm: Mm } {
  const isUpright = rear === 'top' || rear === 'bottom';
  const [fromRear, alongRear] = isUpright ? [depthMm, widthMm] : [widthMm, depthMm];
  return {
    widthMm: tens(BEFORE + fromRear + BEYOND_FRONT),
    heightMm: tens(ABOVE + alongRear + BEYOND_BELOW),
  };
}

function tens(mm: Mm): Mm {
  return Math.min(2_000, 10 * Math.ceil(mm / 10));
}

/** Up to which size of boards a case has standoffs. */
export type GridFor = FormFactor | 'none';

/** The published places of standoffs for boards up to a size, as far as the tray does not have them. */
export function gridFor(size: GridFor, tray: Tray, place: BoardPlace): readonly Standoff[] {
  const largest = FORM_FACTOR_ENTRIES.findIndex(({ id }) => id === size);
  if (largest < 0) return [];
  const taken = new Set(trayPlaces(tray).map((each) => each.place.id));
  return standoffGrid(
    FORM_FACTOR_ENTRIES.slice(largest).map(({ outline }) => ({ outline, unsure: unsureHoles(outline) })),
    place,
    tray.standoffs ?? [],
    (wished) => {
      const id = freshId(wished, 'standoff', taken);
      taken.add(id);
      return id;
    },
  );
}

/** The choices of a list: largest first, as the library has them. */
export const GRIDS: readonly { readonly id: GridFor; readonly label: string }[] = [
  ...FORM_FACTOR_ENTRIES.map(({ id, name }, at) => ({
    id,
    label: at === FORM_FACTOR_ENTRIES.length - 1 ? `${name} boards` : `boards up to ${name}`,
  })),
  { id: 'none', label: 'none now' },
];

/** A tray of some size with the board at its usual place and, where wanted, the standoffs for it. */
export function firstTray(size: { readonly widthMm: Mm; readonly heightMm: Mm }, grid: GridFor): Tray {
  const bare: Tray = { ...size, points: [], openings: [], bays: [], board: FIRST_BOARD_PLACE, paths: [] };
  const standoffs = gridFor(grid, bare, FIRST_BOARD_PLACE);
  return standoffs.length === 0 ? bare : { ...bare, standoffs: [...standoffs] };
}
