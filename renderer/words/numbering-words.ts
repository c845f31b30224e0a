import type { Corner, Numbering, SCHEMES } from '../../boards/document/grid';

export const SCHEME_WORDS = {
  'zig-zag': 'zig-zag',
  'by-row': 'row by row',
  'by-column': 'column by column',
  'u-shaped': 'out and back',
} as const satisfies Record<(typeof SCHEMES)[number], string>;

export const CORNER_WORDS = {
  'top-left': 'top left',
  'top-right': 'top right',
  'bottom-left': 'bottom left',
  'bottom-right': 'bottom right',
} as const satisfies Record<Corner, string>;

/** "zig-zag from the bottom left", "labels of their own": how positions are counted. Corners are told as they are drawn. */
export function numberingWords(numbering: Numbering, drawn: (corner: Corner) => Corner): string {
  if (numbering.scheme === 'free') return 'labels of their own';
  return `${SCHEME_WORDS[numbering.scheme]} from the ${CORNER_WORDS[drawn(numbering.from)]}`;
}
