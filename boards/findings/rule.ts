import type { CheckContext } from './context';
import type { FindingCode, FindingOf } from './finding';

/** One thing that is looked for. Its id is the code of what it finds. */
export interface Rule<Code extends FindingCode = FindingCode> {
  readonly id: Code;
  /** The published document it rests on, or "common practice, no source". */
  readonly source: string;
  /** Codes that have nothing to add once this rule has spoken about the same lead and pins. */
  readonly explains: readonly FindingCode[];
  readonly check: (context: CheckContext) => readonly FindingOf<Code>[];
}
