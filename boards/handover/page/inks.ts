import type { WireColour } from '../../document/lead';

/**
 * The inks of a page. Greys only, but for wires: nothing is said by colour alone, so a page from any
 * printer says the same. Text is set in `ink` and `soft`; `line` and `faint` are for strokes and grounds.
 */
export const INKS = {
  ink: '#141414',
  soft: '#474747',
  line: '#767676',
  hair: '#b4b4b4',
  faint: '#efefef',
  paper: '#ffffff',
} as const;

export type Ink = keyof typeof INKS;

/** Wires have their own colour, as in the window; ink round it and its word beside it say it in grey. */
const WIRE_INKS: Readonly<Record<WireColour, string>> = {
  black: '#1b1b1b',
  brown: '#7a4a21',
  red: '#cf2f27',
  orange: '#e8801a',
  yellow: '#f2cf1d',
  green: '#2e8f4e',
  blue: '#2f6fc4',
  violet: '#7d4ba8',
  grey: '#8b9096',
  white: '#ffffff',
  pink: '#f0a3b8',
  turquoise: '#2bb5b0',
};

/** What shapes may be filled with; text and strokes are set in the greys. */
export type Fill = Ink | `wire-${WireColour}`;

const FILLS: ReadonlyMap<string, string> = new Map([
  ...Object.entries(INKS),
  ...Object.entries(WIRE_INKS).map(([colour, tint]) => [`wire-${colour}`, tint] as const),
]);

/** As CSS and PDF write it: "#cf2f27". */
export function tintOf(fill: Fill): string {
  return FILLS.get(fill) ?? INKS.ink;
}
