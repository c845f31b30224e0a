import { createStore, type StoreApi } from 'zustand/vanilla';
import { ok, type Result } from '../../boards/base/result';
import type { Build } from '../../boards/document/build';
import type { Command } from '../../boards/edit/command';
import { type History, perform, redo, startHistory, undo } from '../../boards/edit/history';
import type { Refusal } from '../../boards/edit/refusal';

/** Where the open build lies on disk, as the machine knows it. */
export interface BuildFile {
  /** null until it has been saved once. */
  readonly handle: string | null;
  readonly name: string;
  /** For people to read only. */
  readonly folder: string | null;
  /** The file as it was when it was last read or written. */
  readonly stamp: string | null;
  readonly readOnly: boolean;
}

/** The open document. Everything else about it is worked out from these. */
export interface OpenBuild {
  /** Counts what was opened: a save that ends when something else is open must not be taken for that one's. */
  readonly opening: number;
  readonly history: History;
  readonly file: BuildFile;
  /** The build that would be there again without saving, by identity; null for a recovery copy. */
  readonly saved: Build | null;
}

export interface Editor {
  /** null: nothing is open, and the start screen shows. */
  readonly open: OpenBuild | null;

  readonly load: (build: Build, file: BuildFile, saved: Build | null) => void;
  readonly close: () => void;
  /** One command, one step. Gives the refusal back to whoever asked. */
  readonly run: (command: Command) => Result<null, Refusal>;
  readonly undo: () => void;
  readonly redo: () => void;
  /**
   * The file now holds this build; edits made while it was being written stay unsaved. Says nothing where
   * something else has been opened since.
   */
  readonly markSaved: (opening: number, build: Build, file: BuildFile) => void;
}

export type EditorStore = StoreApi<Editor>;

export function createEditor(): EditorStore {
  let openings = 0;
  return createStore<Editor>()((set, get) => {
    const change = (step: (history: History) => History) =>
      set(({ open }) => (open ? { open: { ...open, history: step(open.history) } } : {}));
    return {
      open: null,
      load: (build, file, saved) =>
        set({ open: { opening: ++openings, history: startHistory(build), file, saved } }),
      close: () => set({ open: null }),
      run: (command) => {
        const { open } = get();
        if (open === null) throw new Error(`Nothing is open for ${command.name}`);
        const result = perform(open.history, command);
        if (!result.ok) return result;
        if (result.value !== open.history) set({ open: { ...open, history: result.value } });
        return ok(null);
      },
      undo: () => change(undo),
      redo: () => change(redo),
      markSaved: (opening, build, file) =>
        set(({ open }) => (open?.opening === opening ? { open: { ...open, file, saved: build } } : {})),
    };
  });
}

export function isUnsaved(open: OpenBuild): boolean {
  return open.saved !== open.history.present;
}

/** How many steps lie between what is safe and what is on the screen. */
export function changesOf({ history, saved }: OpenBuild): number {
  if (saved === history.present) return 0;
  const back = history.past.findIndex((step) => step.build === saved);
  if (back >= 0) return history.past.length - back;
  const ahead = history.future.findIndex((step) => step.build === saved);
  if (ahead >= 0) return ahead + 1;
  // What was saved is in no step any more: there is a change, though every step of this window may be undone.
  return saved === null ? history.past.length : Math.max(1, history.past.length);
}
