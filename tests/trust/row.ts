/** One promise of the program, and how it is put to the test. */
export interface TrustRow {
  /** "R1": R for reliability, S for security. */
  readonly id: string;
  /** What is promised, in one sentence. */
  readonly promise: string;
  /** How many have to be tried for the promise to count as tested, and what they are. */
  readonly target: { readonly count: number; readonly what: string };
  /** Takes more than a few minutes: only `npm run soak` runs it. */
  readonly long?: true;
  readonly run: () => Promise<Tried>;
}

/** What came of a row. */
export interface Tried {
  readonly tried: number;
  /** One line for each time the promise did not hold: what was done, and what came of it. */
  readonly failures: readonly string[];
  /** Why nothing, or not everything, could be tried here: "there is no gcc". */
  readonly notRun?: string;
}
