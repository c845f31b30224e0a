/** What a circuit cannot do, in codes. Closed: findings put them in words. */
export type CircuitProblem =
  /** Ideal sources tied together that disagree; the last one that closed the loop. */
  | { readonly code: 'sources-fight'; readonly device: string; readonly with: readonly string[] }
  /** A loop of ideal branches: voltages are certain, how the current divides is not. */
  | { readonly code: 'current-undetermined'; readonly device: string; readonly with: readonly string[] }
  /** A current source with no way back for its current. */
  | { readonly code: 'no-way-back'; readonly device: string }
  /** No operating point within the step limit; the island's values are the last tried. */
  | { readonly code: 'gave-up'; readonly nodes: readonly string[]; readonly steps: number };
