/** The kinds of file that a paper can be made as. */
export const PAPER_FORMATS = ['pdf', 'svg', 'png'] as const;
export type PaperFormat = (typeof PAPER_FORMATS)[number];

/** How large a picture may be asked for; 1 is 96 pixels an inch. */
export const SCALES = { least: 0.25, usual: 2, most: 8 } as const;
