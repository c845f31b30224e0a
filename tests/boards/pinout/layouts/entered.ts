import type { Build } from '../../../../boards/document/build';
import { blankHeader } from '../../../../boards/library/blank-header';
import { done } from '../../edit/carried-out';
import { bench } from '../../fixtures/bench';
import { type Layout, pinOfLayout } from './known-layouts';

const ID = 'header';

/**
 * A layout set down as the editor does it: a blank header, counted row by row until it is numbered as it is
 * printed, half of its pins one by one, the others at once. Every step has to leave a build that opens again.
 */
export function entered(layout: Layout): Build {
  const { grid } = layout;
  const pins = layout.pins.map((pin) => pinOfLayout(layout, pin));
  const half = Math.ceil(pins.length / 2);
  const blank = blankHeader(
    { ...grid, numbering: { scheme: 'by-row', from: 'top-left' } },
    { id: ID, print: 'HEADER', place: { xMm: 40, yMm: 40, turn: 0 } },
  );
  const rest = pins.slice(half);
  return done(
    bench([], []),
    { name: 'add-connector', args: { connector: blank } },
    { name: 'number-connector', args: { connector: ID, numbering: grid.numbering } },
    ...pins.slice(0, half).map((pin) => ({ name: 'change-pin', args: { connector: ID, pin } }) as const),
    ...(rest.length > 0 ? [{ name: 'fill-pins', args: { connector: ID, pins: rest } } as const] : []),
  );
}
