import type { Mm } from '../base/units';

/** The faces of the drawing: reading text, the same in bold, and the mono face of lead names. */
export type Face = 'text' | 'strong' | 'mono';

/** Width of one line of text. */
export type Measure = (text: string, sizeMm: Mm, face: Face) => Mm;

/** Advances of the printable ASCII characters, space to tilde, in thousandths of the type size. */
const ADVANCES: Readonly<Record<'text' | 'strong', readonly number[]>> = {
  text: [
    280, 286, 301, 651, 592, 919, 731, 160, 299, 299, 485, 606, 210, 362, 210, 387, 648, 407, 548, 576, 614,
    588, 598, 510, 615, 595, 210, 210, 553, 628, 553, 480, 778, 626, 613, 645, 669, 569, 552, 694, 694, 392,
    512, 631, 541, 824, 693, 714, 592, 724, 614, 592, 558, 690, 593, 856, 623, 575, 607, 317, 387, 344, 552,
    372, 243, 525, 566, 485, 564, 538, 314, 558, 550, 252, 245, 492, 262, 845, 550, 548, 566, 574, 349, 471,
    326, 540, 461, 684, 481, 449, 460, 344, 237, 344, 555,
  ],
  strong: [
    308, 300, 376, 747, 607, 961, 726, 203, 329, 329, 485, 596, 262, 371, 262, 432, 658, 435, 574, 596, 622,
    605, 621, 533, 623, 574, 262, 262, 567, 614, 567, 536, 781, 670, 638, 656, 686, 593, 564, 715, 700, 420,
    553, 659, 550, 853, 714, 742, 623, 752, 644, 607, 599, 687, 636, 881, 675, 638, 617, 336, 432, 344, 577,
    395, 281, 548, 591, 506, 591, 559, 357, 588, 568, 293, 257, 546, 309, 876, 568, 571, 591, 595, 372, 503,
    368, 563, 519, 731, 531, 510, 499, 376, 251, 376, 540,
  ],
};
const MONO_ADVANCE = 632;
/** What no table lists: Latin letters with marks are as wide as this at most, other scripts a full square. */
const LATIN_ADVANCE = 700;
const SQUARE_ADVANCE = 1_000;

function advance(code: number, face: Face): number {
  if (code >= 0x2e80) return SQUARE_ADVANCE;
  if (face === 'mono') return MONO_ADVANCE;
  if (code === 0xa0) return ADVANCES[face][0] ?? LATIN_ADVANCE;
  return ADVANCES[face][code - 32] ?? LATIN_ADVANCE;
}

/**
 * Width by the advances of the two shipped fonts, measured once and written down. The layout is
 * so the same in the window, on paper and in a test, and does not wait for a font.
 */
export const measureByTable: Measure = (text, sizeMm, face) => {
  let thousandths = 0;
  for (const character of text) thousandths += advance(character.codePointAt(0) ?? 32, face);
  return (thousandths * sizeMm) / 1_000;
};
