/** A question that could be asked next: what it is expected to tell, what it costs, whether it may be asked at all. */
export interface Question {
  readonly gainBits: number;
  /** Above 0, in any common measure. */
  readonly effort: number;
  /** Why it must not be asked. Such a question is never chosen, however much it tells. */
  readonly risk?: unknown;
}

/**
 * The question that tells most for its effort among those without a risk; the first of equals. Undefined
 * when none tells at least `leastBits`.
 */
export function bestQuestion<Q extends Question>(questions: readonly Q[], leastBits = 0): Q | undefined {
  let best: Q | undefined;
  for (const question of questions) {
    if (question.risk !== undefined || question.gainBits <= leastBits) continue;
    if (best === undefined || worth(question) > worth(best)) best = question;
  }
  return best;
}

function worth({ gainBits, effort }: Question): number {
  return gainBits / effort;
}
