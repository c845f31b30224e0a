import type { SignalId } from '../../signals/signals';

/** What a list contradicts, leaves open or says too much of. Data; the words are in list-words.ts. */
export type ListProblem =
  | {
      readonly code: 'pin-twice';
      readonly label: string;
      readonly words: readonly string[];
      readonly lines: readonly number[];
    }
  | { readonly code: 'beyond'; readonly labels: readonly string[]; readonly positions: number }
  | { readonly code: 'signal-twice'; readonly signal: SignalId; readonly labels: readonly string[] }
  | {
      readonly code: 'half-pair';
      readonly signal: SignalId;
      readonly lacks: SignalId;
      readonly labels: readonly string[];
    }
  | { readonly code: 'gaps'; readonly labels: readonly string[] }
  | {
      readonly code: 'left-over';
      readonly lines: readonly { readonly line: number; readonly text: string }[];
    }
  | { readonly code: 'counted'; readonly first: string };
