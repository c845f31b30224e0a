import { LIMITS } from '../limits';
import type { FieldProblem } from './problem';

/** What is wrong with a file or a value: the first of it in full, the rest as a number. */
export interface FieldProblems {
  readonly fields: readonly FieldProblem[];
  readonly more: number;
}

/** Gathers problems up to a limit, so that a file with a million faults costs no more than one with a thousand. */
export class ProblemList {
  readonly #fields: FieldProblem[] = [];
  #more = 0;

  /** How many have been told so far. */
  get length(): number {
    return this.#fields.length + this.#more;
  }

  /** True when it is no use to look on. */
  get full(): boolean {
    return this.length >= LIMITS.problemsCounted;
  }

  /** The words are only made for a problem that will be shown. */
  add(problem: () => FieldProblem): void {
    if (this.#fields.length < LIMITS.problemsShown) this.#fields.push(problem());
    else if (!this.full) this.#more += 1;
  }

  get problems(): FieldProblems {
    return { fields: [...this.#fields], more: this.#more };
  }
}
