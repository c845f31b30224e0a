/** A change of the code that nothing can notice, since the program does the same with it. */
export interface Equivalent {
  readonly file: string;
  /** The line on which it begins, as it stands there. */
  readonly line: string;
  /** What Stryker puts in place of it. */
  readonly replacement: string;
  readonly why: string;
}

/** Not counted. One that is noticed after all, or is no longer there, fails the row. */
export const EQUIVALENTS: readonly Equivalent[] = [];
