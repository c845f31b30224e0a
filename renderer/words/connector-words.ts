import type { Connector } from '../../boards/document/connector';
import { type Corner, rowPitchOf } from '../../boards/document/grid';
import { familyWords } from './family-words';
import { numberingWords } from './numbering-words';
import { shapeWords } from './plug-words';

const NBSP = '\u00a0';

/** "2 × 5 at 2.54 mm, open posts, zig-zag from the bottom left": what shape a connector has. Corners are told as they are drawn. */
export function connectorShapeWords(connector: Connector, drawn: (corner: Corner) => Corner): string {
  const { grid, family } = connector;
  const across = rowPitchOf(grid) === grid.pitchMm ? '' : ` and ${rowPitchOf(grid)}${NBSP}mm between rows`;
  return `${shapeWords(connector)} at ${grid.pitchMm}${NBSP}mm${across}; ${familyWords(family)}; ${numberingWords(grid.numbering, drawn)}`;
}
