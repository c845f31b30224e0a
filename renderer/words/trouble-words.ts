import type { Moment, Sense } from '../../boards/diagnosis/observations/observation';

/** The groups of questions, by when something shows. */
export const MOMENT_WORDS: Readonly<Record<Moment, string>> = {
  'before-press': 'Before the press, machine off',
  'on-press': 'On the press',
  'after-seconds': 'In the first minute',
  'in-use': 'In use',
};

export const SENSE_WORDS: Readonly<Record<Sense, string>> = {
  see: 'look',
  hear: 'listen',
  smell: 'smell',
  feel: 'feel',
  read: 'read the screen',
  measure: 'measure',
  try: 'try',
};

export const NOTHING_SAID =
  'Nothing was noticed yet. These are only how often each is met. Answer what you see, beginning with “Look first”.';

/** How much a trial is expected to tell. */
export function gainWords(gainBits: number): string {
  if (gainBits >= 0.5) return 'tells much';
  return gainBits >= 0.12 ? 'tells something' : 'tells little';
}

export function effortWords(minutes: number): string {
  return minutes < 1 ? 'under a minute' : `about ${Math.round(minutes)}\u00a0min`;
}

export function waitsWords(before: string, result: string): string {
  return `Has a meaning only after “${before}” with “${result}”.`;
}

export const TELLS_NOTHING = 'Would tell nothing more now.';
