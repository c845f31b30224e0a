import { pinOf } from '../../document/lookup';
import { gridIndex } from '../../document/numbering';
import type { Layout } from './known-layout';
import { laidPins } from './laid-over';
import type { Likeness } from './likeness';
import { isKnown, pinCode } from './pin-code';

/** A pin of which nothing is known yet, and how many kinds of it likenesses are still possible. */
export interface TellingPin {
  readonly pin: string;
  /** How many different things the likenesses say of it. */
  readonly words: number;
}

/** The unknown pin on which likenesses differ most: to know it would rule most of them out. */
export function tellingPin(here: Layout, likenesses: readonly Likeness[]): TellingPin | undefined {
  const said = new Map<string, Set<number>>();
  for (const likeness of likenesses) {
    for (const { cell, pin } of laidPins(likeness.layout.connector, likeness)) {
      const label = gridIndex(here.grid).labelAt(cell);
      if (label === undefined || isKnown(pinOf(here, label))) continue;
      const words = said.get(label) ?? new Set();
      said.set(label, words.add(pinCode(pin).signal));
    }
  }
  let best: TellingPin | undefined;
  for (const { label } of gridIndex(here.grid).positions) {
    const words = said.get(label)?.size ?? 0;
    if (words > (best?.words ?? 1)) best = { pin: label, words };
  }
  return best;
}
