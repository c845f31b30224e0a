import type { DrawnText } from '../page/page';

/** How the text of a picture is written. */
export type Lettering =
  /** As text, to be searched and read aloud; `style` is CSS with the fonts and a class for each face. */
  | { readonly kind: 'text'; readonly style: string }
  /** As shapes, for a program that has no fonts: the path of a text whose letters stand at 0, 0. */
  | { readonly kind: 'outlines'; readonly pathOf: (text: DrawnText) => string };
