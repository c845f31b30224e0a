import type { Mm } from '../../base/units';
import { overlap, type Rect } from '../../drawing/geometry';

interface Size {
  readonly width: Mm;
  readonly height: Mm;
}

const GAP: Mm = 0.3;
/** How far off a number may stand, in steps outward. */
const STEPS: readonly Mm[] = [0, 1, 2, 3.5, 5, 7, 9];

/**
 * A place beside each shell for its number, where no shell and no other number stands: beside its long
 * side first, then further off. Where nothing is free it stands on the shell itself.
 */
export function freePlaces(
  wanted: readonly { readonly shell: Rect; readonly size: Size }[],
  shells: readonly Rect[],
  room: Rect,
): readonly Rect[] {
  const taken: Rect[] = [...shells];
  return wanted.map(({ shell, size }) => {
    const box = candidates(shell, size).find(
      (candidate) => inside(candidate, room) && !taken.some((other) => overlap(other, candidate)),
    );
    const placed = box ?? about(shell, size);
    taken.push(placed);
    return placed;
  });
}

function candidates(shell: Rect, { width, height }: Size): readonly Rect[] {
  const middleX = shell.x + (shell.width - width) / 2;
  const middleY = shell.y + (shell.height - height) / 2;
  return STEPS.flatMap((step) => {
    const off = GAP + step;
    const left = { x: shell.x - off - width, y: middleY };
    const right = { x: shell.x + shell.width + off, y: middleY };
    const above = { x: middleX, y: shell.y - off - height };
    const below = { x: middleX, y: shell.y + shell.height + off };
    const corners = [
      { x: left.x, y: above.y },
      { x: right.x, y: above.y },
      { x: left.x, y: below.y },
      { x: right.x, y: below.y },
    ];
    const sides = shell.width >= shell.height ? [left, right, above, below] : [above, below, left, right];
    return [...sides, ...corners].map((corner) => ({ ...corner, width, height }));
  });
}

function about(shell: Rect, { width, height }: Size): Rect {
  return {
    x: shell.x + (shell.width - width) / 2,
    y: shell.y + (shell.height - height) / 2,
    width,
    height,
  };
}

function inside(box: Rect, room: Rect): boolean {
  return (
    box.x >= room.x &&
    box.y >= room.y &&
    box.x + box.width <= room.x + room.width &&
    box.y + box.height <= room.y + room.height
  );
}
