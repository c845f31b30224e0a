import type { HeaderLayout, Spot } from './header-layout';

/** The chosen pins of a header. Where a choice began, and where the focus is, need not be chosen any more. */
export interface PinSelection {
  readonly chosen: ReadonlySet<string>;
  readonly anchor: string;
  readonly focus: string;
}

export type Direction = 'up' | 'down' | 'left' | 'right';

const STEPS: Readonly<Record<Direction, Spot>> = {
  up: [-1, 0],
  down: [1, 0],
  left: [0, -1],
  right: [0, 1],
};

export function only(label: string): PinSelection {
  return { chosen: new Set([label]), anchor: label, focus: label };
}

/** Nothing chosen; the focus would come to lie on a label. */
export function nothing(label: string): PinSelection {
  return { chosen: new Set(), anchor: label, focus: label };
}

/**
 * What is chosen of a header as it is now, where the last choice may have been made on another pin from
 * outside or on labels that are no more.
 */
export function settled(
  { labels }: HeaderLayout,
  last: PinSelection | null,
  pin: string | undefined,
): PinSelection {
  const there = new Set(labels);
  const first = labels[0] ?? '';
  if (pin === undefined || !there.has(pin)) return nothing(first);
  if (last?.focus !== pin || !there.has(last.anchor)) return only(pin);
  return { ...last, chosen: new Set([...last.chosen].filter((label) => there.has(label))) };
}

/** One more or one less; the last one stays chosen. */
export function toggled(selection: PinSelection, label: string): PinSelection {
  const chosen = new Set(selection.chosen);
  if (!chosen.delete(label)) chosen.add(label);
  else if (chosen.size === 0) return only(label);
  return { chosen, anchor: label, focus: label };
}

/** The rectangle from where the choice began to there. */
export function extendedTo(layout: HeaderLayout, { anchor }: PinSelection, label: string): PinSelection {
  const [row, col] = layout.spotOf(anchor);
  const [toRow, toCol] = layout.spotOf(label);
  const within = (at: number, from: number, to: number) =>
    at >= Math.min(from, to) && at <= Math.max(from, to);
  const chosen = layout.labels.filter((each) => {
    const [r, c] = layout.spotOf(each);
    return within(r, row, toRow) && within(c, col, toCol);
  });
  return { chosen: new Set(chosen), anchor, focus: label };
}

export function everything({ labels }: HeaderLayout, { anchor, focus }: PinSelection): PinSelection {
  return { chosen: new Set(labels), anchor, focus };
}

/** The focus moves and nothing else. */
export function focused(selection: PinSelection, focus: string): PinSelection {
  return { ...selection, focus };
}

/** The next position in a direction as drawn, over gaps; the same one where there is none. */
export function stepFrom(layout: HeaderLayout, label: string, direction: Direction): string {
  const [dRow, dCol] = STEPS[direction];
  let [row, col] = layout.spotOf(label);
  for (;;) {
    row += dRow;
    col += dCol;
    if (row < 0 || col < 0 || row >= layout.rows || col >= layout.cols) return label;
    const next = layout.labelAt([row, col]);
    if (next !== null) return next;
  }
}

/** The first or last position of the row that a label lies in, or of the whole header. */
export function endOf(layout: HeaderLayout, label: string, end: 'first' | 'last', whole: boolean): string {
  const [row] = layout.spotOf(label);
  const there = whole ? layout.labels : layout.labels.filter((each) => layout.spotOf(each)[0] === row);
  return there.at(end === 'first' ? 0 : -1) ?? label;
}

/** The chosen ones in the order in which they are drawn. */
export function inOrder({ labels }: HeaderLayout, { chosen }: PinSelection): readonly string[] {
  return labels.filter((label) => chosen.has(label));
}
