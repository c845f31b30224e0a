import type { ReactNode } from 'react';
import { type Connector, SIDES, type Side } from '../../../../boards/document/connector';
import { gridIndex } from '../../../../boards/document/numbering';
import { orientationOf } from '../../../../boards/drawing/orientation';
import { useBuild } from '../../../workbench';
import { drawnSide } from './drawn-side';
import type { HeaderLayout } from './header-layout';

interface HeaderFrameProps {
  readonly connector: Connector;
  readonly layout: HeaderLayout;
  readonly children: ReactNode;
}

/** The shell round the pins: its walls, the slot in one of them, and the cut corner nearest to the first pin. */
export function HeaderFrame({ connector, layout, children }: HeaderFrameProps) {
  const { view } = useBuild();
  const { shroud, place } = connector;
  const orientation = orientationOf(view);
  const walls = new Set((shroud?.walls ?? []).map((side) => drawnSide(side, place.turn, orientation)));
  const guide = shroud?.guide && drawnSide(shroud.guide, place.turn, orientation);
  const attributes = Object.fromEntries(
    SIDES.map((side) => [`data-wall-${side}`, walls.has(side) || undefined]),
  );
  return (
    <div className="header-frame" {...attributes}>
      {children}
      {guide && <SlotMark side={guide} />}
      <span className="header-corner" data-corner={cornerOf(connector, layout)} aria-hidden="true" />
    </div>
  );
}

function SlotMark({ side }: { readonly side: Side }) {
  return <span className="header-slot" data-side={side} role="img" aria-label={`slot ${SLOT_WORDS[side]}`} />;
}

const SLOT_WORDS = {
  top: 'at the top',
  right: 'on the right',
  bottom: 'at the bottom',
  left: 'on the left',
} as const satisfies Record<Side, string>;

/** "top-left": the corner of the drawing nearest to the position that is counted first. */
function cornerOf({ grid }: Connector, layout: HeaderLayout): string {
  const first = gridIndex(grid).positions[0];
  const [row, col] = first ? layout.spotOf(first.label) : [0, 0];
  const below = row > (layout.rows - 1) / 2;
  const right = col > (layout.cols - 1) / 2;
  return `${below ? 'bottom' : 'top'}-${right ? 'right' : 'left'}`;
}
