/** When something shows, in the order of a start. */
export const MOMENTS = ['before-press', 'on-press', 'after-seconds', 'in-use'] as const;
export type Moment = (typeof MOMENTS)[number];

/** How a person comes to know of it. */
export type Sense = 'see' | 'hear' | 'smell' | 'feel' | 'read' | 'measure' | 'try';

/** One thing that a person at the bench can notice without knowing what is wrong. */
export interface Observation<Id extends string = string> {
  readonly id: Id;
  readonly moment: Moment;
  readonly sense: Sense;
  /** Answered by yes or no. */
  readonly question: string;
  /** What yes looks, sounds or reads like. */
  readonly sign: string;
  /** Short codes by which it may be named on the command line, besides its id. */
  readonly codes: readonly string[];
  /** Heat, smoke or sparks: mains off first, and nothing is tried again with the same part. */
  readonly stop: boolean;
}

/** A row of a table of observations. */
export type ObservationRow<Id extends string = string> = readonly [
  id: Id,
  sense: Sense,
  question: string,
  sign: string,
  codes?: readonly string[],
  stop?: 'stop',
];

/** The rows of one moment as observations. */
export function seenAt<const Rows extends readonly ObservationRow[]>(
  moment: Moment,
  rows: Rows,
): readonly Observation<Rows[number][0]>[] {
  return rows.map(([id, sense, question, sign, codes = [], stop]) => ({
    id,
    moment,
    sense,
    question,
    sign,
    codes,
    stop: stop !== undefined,
  }));
}
