/** The parts of a trouble sheet, in the order in which they are printed. */
export const TROUBLE_PARTS = ['suspects', 'looks', 'trials', 'log'] as const;
export type TroublePart = (typeof TROUBLE_PARTS)[number];

export const TROUBLE_TITLES: Readonly<Record<TroublePart, string>> = {
  suspects: 'What it may be',
  looks: 'What to look for first',
  trials: 'What to try next',
  log: 'What was noticed and tried',
};

/** What is to be known before a part. */
export const TROUBLE_PART_WORDS: Readonly<Record<TroublePart, string>> = {
  suspects:
    'How likely each is after what was noticed and tried. The numbers of the lines that speak for it and against it are those of the list at the end.',
  looks: 'Nothing has to be touched for these. Tick the answer, and enter it later.',
  trials:
    'The best first. Tick what came of it, and enter it before the next trial: it may change the order.',
  log: 'In the order in which it was written down. What stands before a fresh start counts no more.',
};

export const NOTHING_LOGGED = 'Nothing is written down yet.';
export const NO_TRIAL =
  'No trial that may be made would tell more. Look again at what was noticed, or ask somebody qualified.';
export const STOPPED_TITLE = 'Stop: nothing is tried any more';
