import type { Build } from '../../document/build';
import type { FindingCode, FindingOf } from '../finding';

/** What would happen, in one short sentence, and why, with pins and names. */
export interface Said {
  readonly title: string;
  readonly reason: string;
}

/** The words for some of the codes: each made from its own finding. */
export type WordsFor<Codes extends FindingCode> = {
  readonly [Code in Codes]: (finding: FindingOf<Code>, build: Build) => Said;
};
