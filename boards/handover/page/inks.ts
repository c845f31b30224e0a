/**
 * The inks of a page. Greys only: what is printed says nothing by colour, so a page from any printer
 * says the same. Text is set in `ink` and `soft`; `line` and `faint` are for strokes and grounds.
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
