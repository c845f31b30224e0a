import type { MeaningId } from './meanings';
import type { Sign } from './signs';

/** How a word was understood, the surest first. */
export type How =
  | 'exact' // as it stands in the word list
  | 'normalised' // but for case, spaces, dots, a port's number
  | 'described' // by a known word inside a longer text
  | 'alike' // by a word that is a letter apart
  | 'twofold'; // by known words of different meaning, of which only one can be meant

/** One thing that a word may mean. */
export interface Understood {
  readonly means: MeaningId;
  readonly sign?: Sign;
  /** Number or letter of the port, as it is written. */
  readonly port?: string;
  readonly how: How;
}

/** What was made of a word: its meaning first, then what it says the pin may be as well. None: not understood. */
export type Meanings = readonly Understood[];
