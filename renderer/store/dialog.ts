import type { BoardSheet } from '../../boards/document/board-sheet';
import type { CaseSheet } from '../../boards/document/case-sheet';
import type { PlugRef } from '../../boards/document/lookup';
import type { FileKind } from '../../boards/host';

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

type Sheet = BoardSheet | CaseSheet;

/** The file of a sheet in the library. */
export interface LibraryFile {
  readonly handle: string;
  /** Called when the file has been written anew. */
  readonly onKept: () => void;
}

/** A window over the window. Those that ask carry the way to answer, called exactly once. */
export type Dialog =
  | {
      readonly kind:
        | 'search'
        | 'keys'
        | 'cautions'
        | 'new-build'
        | 'recent'
        | 'versions'
        | 'add-connector'
        | 'add-lead'
        | 'add-unit'
        | 'print-pinout'
        | 'print-bench-sheet'
        | 'large-steps'
        /** Shown by the Diagnose area itself, which knows what to do next. */
        | 'large-trial'
        | 'print-trouble'
        | 'print-labels';
    }
  | { readonly kind: 'places'; readonly plug: PlugRef }
  /** A unit with one of its connectors from near by; the first where none is named. */
  | { readonly kind: 'unit'; readonly unit: string; readonly connector?: string }
  | { readonly kind: 'number-connector'; readonly connector: string }
  | { readonly kind: 'header-picture'; readonly connector: string }
  | { readonly kind: 'pin-list' | 'looks-like' | 'photo' | 'meter'; readonly connector: string }
  /** The library of sheets; a sheet to keep is put into it once it has been read. */
  | { readonly kind: 'library'; readonly keep?: Sheet }
  | {
      readonly kind: 'pick-sheet';
      readonly of: 'board' | 'case';
      readonly answer: (sheet: Sheet | null) => void;
    }
  /**
   * Two sheets side by side. What is taken over goes into the open build where mine is of that build, and
   * into the file of mine where it lies in the library.
   */
  | { readonly kind: 'compare'; readonly mine: Sheet; readonly theirs: Sheet; readonly of?: LibraryFile }
  | { readonly kind: 'message'; readonly message: Message }
  | {
      readonly kind: 'question';
      readonly question: Question;
      /** null: the person stepped back. */
      readonly answer: (choice: string | null) => void;
    }
  | { readonly kind: 'browse-open'; readonly answer: (handle: string | null) => void }
  | { readonly kind: 'browse-folder'; readonly answer: (handle: string | null) => void }
  | {
      readonly kind: 'browse-save';
      readonly suggested: string;
      readonly file: FileKind;
      readonly answer: (place: SavePlace | null) => void;
    };

/** Whether a window is about the open build, so that it has nothing to say of the next one. */
const OF_BUILD = {
  search: false,
  keys: false,
  cautions: false,
  'new-build': false,
  recent: false,
  versions: true,
  'add-connector': true,
  'add-lead': true,
  'add-unit': true,
  'print-pinout': true,
  'print-bench-sheet': true,
  'large-steps': true,
  'large-trial': true,
  'print-trouble': true,
  'print-labels': true,
  places: true,
  unit: true,
  'number-connector': true,
  'header-picture': true,
  'pin-list': true,
  'looks-like': true,
  photo: true,
  meter: true,
  library: false,
  'pick-sheet': false,
  // Nothing is taken over into a build that neither sheet is of.
  compare: false,
  message: false,
  question: false,
  'browse-open': false,
  'browse-folder': false,
  'browse-save': false,
} as const satisfies Readonly<Record<Dialog['kind'], boolean>>;

export function isOfBuild({ kind }: Dialog): boolean {
  return OF_BUILD[kind];
}

/** Where a file will be written, as the machine knows it. */
export interface SavePlace {
  readonly handle: string;
  readonly name: string;
  readonly exists: boolean;
}
