import type { PlugRef } from '../../boards/document/lookup';

/** A plain message: what happened, the particulars, what to do. */
export interface Message {
  readonly title: string;
  readonly lines: readonly string[];
  readonly advice: string;
}

/** A question with its answers as buttons; the first is the one Enter gives. */
export interface Question {
  readonly title: string;
  readonly lines: readonly string[];
  readonly choices: readonly { readonly id: string; readonly label: string }[];
}

/** A window over the window. Those that ask carry the way to answer, called exactly once. */
export type Dialog =
  | { readonly kind: 'search' | 'keys' | 'cautions' | 'new-build' | 'recent' | 'add-connector' | 'add-lead' }
  | { readonly kind: 'places'; readonly plug: PlugRef }
  | { readonly kind: 'pin-list' | 'looks-like'; readonly connector: string }
  | { readonly kind: 'message'; readonly message: Message }
  | {
      readonly kind: 'question';
      readonly question: Question;
      /** null: the person stepped back. */
      readonly answer: (choice: string | null) => void;
    }
  | { readonly kind: 'browse-open'; readonly answer: (handle: string | null) => void }
  | {
      readonly kind: 'browse-save';
      readonly suggested: string;
      readonly answer: (place: SavePlace | null) => void;
    };

/** Where a file will be written, as the machine knows it. */
export interface SavePlace {
  readonly handle: string;
  readonly name: string;
  readonly exists: boolean;
}
