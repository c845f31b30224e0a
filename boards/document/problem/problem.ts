/** One place in a file that is not as it should be. */
export interface FieldProblem {
  /** "leads[3].plugs[0].grid.rows"; empty for the file as a whole. */
  readonly path: string;
  readonly expected: string;
  readonly found: string;
}

/** Why a text did not become a document. Closed: every one has words in problem-words.ts. */
export type OpenProblem =
  | { readonly code: 'too-large'; readonly bytes: number; readonly limitBytes: number }
  | { readonly code: 'empty' }
  | { readonly code: 'not-json'; readonly line: number; readonly column: number; readonly detail: string }
  | { readonly code: 'too-deep'; readonly line: number; readonly limit: number }
  | { readonly code: 'not-ours'; readonly found: string }
  | { readonly code: 'newer'; readonly format: string; readonly version: number; readonly known: number }
  | { readonly code: 'invalid'; readonly fields: readonly FieldProblem[]; readonly more: number };
