import type { Mm } from '../../../boards/base/units';
import type { Block } from '../../../boards/drawing/block';
import type { WayOut } from '../../../boards/drawing/frame';
import type { Point } from '../../../boards/drawing/geometry';
import { laneWidth, pinSize, SIZES } from '../../../boards/drawing/sizes';
import type { WiredPlug, WireEnd } from './wiring';

/** A wire in its lane: out of the contact, along to the lane, and from there straight out. */
export interface LanedWire {
  readonly wired: WiredPlug;
  readonly end: WireEnd;
  readonly along: Mm;
  /** Thinner where several share a narrow lane. */
  readonly width: Mm;
  /** The path up to the lane; the flag adds the end. */
  readonly path: readonly Point[];
}

/**
 * Puts the wires that leave a block on one way into the lanes beside their columns. The row nearest
 * to the way out takes the slot nearest to its pin, so that no wire crosses another in its lane.
 */
export function lanedWires(block: Block, plugs: readonly WiredPlug[], way: WayOut): readonly LanedWire[] {
  const { frame, grid } = block;
  const pitch = frame.tall ? grid.pitchY : grid.pitchX;
  const lane = laneWidth(pitch);
  const half = pinSize(grid.pitchX, grid.pitchY) / 2;
  const depth = (end: WireEnd) => (frame.tall ? end.col : end.row) * (way === 'before' ? 1 : -1);
  const columns = new Map<number, { wired: WiredPlug; end: WireEnd }[]>();
  for (const wired of plugs)
    for (const end of wired.ends) {
      const column = frame.tall ? end.row : end.col;
      columns.set(column, [...(columns.get(column) ?? []), { wired, end }]);
    }
  return [...columns.entries()]
    .sort(([a], [b]) => a - b)
    .flatMap(([, wires]) => {
      const sorted = wires
        .map((wire, index) => ({ ...wire, index }))
        .sort((a, b) => depth(a.end) - depth(b.end) || a.index - b.index);
      const spacing = Math.min(SIZES.wireSpacing, lane / sorted.length);
      return sorted.map(({ wired, end }, slot): LanedWire => {
        const middle = frame.along(end.centre) + pitch / 2 - lane / 2;
        const along = middle + (slot - (sorted.length - 1) / 2) * spacing;
        const beside = sorted.filter((other) => depth(other.end) === depth(end));
        const place = beside.findIndex((other) => other.end === end);
        const step = Math.min(SIZES.wireSpacing, (1.6 * half) / beside.length);
        // Contacts shared by several wires: the one in the nearest slot turns off first.
        const shift = (place - (beside.length - 1) / 2) * step * (way === 'before' ? 1 : -1);
        const out = frame.out(end.centre) + shift;
        return {
          wired,
          end,
          along,
          width: Math.min(SIZES.wire, 0.7 * Math.min(spacing, step)),
          path: [frame.point(frame.along(end.centre) + half, out), frame.point(along, out)],
        };
      });
    });
}
