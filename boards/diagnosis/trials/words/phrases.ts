import type { ResultId } from '../trial';

/** What a trial is called, how it is made, and what its results say where that is more than what they say in general. */
export interface TrialWords {
  readonly title: string;
  readonly steps: readonly string[];
  readonly results?: Readonly<Partial<Record<ResultId, string>>>;
}

export type WordsById = Readonly<Record<string, TrialWords>>;

export const MAINS_OFF = 'Switch the supply off at the rear, pull the mains plug and wait half a minute.';
export const START = 'Put mains back and start once, hands off the board.';
