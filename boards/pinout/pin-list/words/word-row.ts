import type { MeaningId } from '../meanings';

/** Ways of writing one meaning. */
export interface WordRow {
  readonly means: MeaningId;
  /** The sign that these words carry in themselves: "anode", "green". */
  readonly sign?: 'plus' | 'minus';
  /**
   * Each as a manual prints it. Case, spaces, dots, hyphens and underlines make no difference, and signs and
   * port numbers are read apart: "HDD LED" stands for "hdd_led+" too. "(HD|HDD) LED" is two words.
   */
  readonly words: readonly string[];
}
