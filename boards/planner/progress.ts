/** How far the work on a plan has come. */
export type Progress =
  /** Leads whose every place has been judged. */
  | { readonly stage: 'places'; readonly done: number; readonly of: number }
  /** Branches of the search looked at; how many there will be is not known before. */
  | { readonly stage: 'search'; readonly branches: number }
  /** Plugs without a place for which the reason and the remedies are known. */
  | { readonly stage: 'remedies'; readonly done: number; readonly of: number };

export type Tell = (progress: Progress) => void;

export const TELL_NOBODY: Tell = () => undefined;
