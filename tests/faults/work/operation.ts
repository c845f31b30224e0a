import type { FileSystem } from '../../../electron/host/file-system';
import type { Place } from './place';

/** What the program told the person; null where it was killed before it could. */
export type Said =
  | { readonly done: true }
  | { readonly done: false; readonly code: string; readonly name: string };

/** One thing a person does that writes files, and what has to be so afterwards, whatever went wrong. */
export interface Operation {
  readonly name: string;
  /** Lays out what is there before, on a sound disk. */
  readonly prepare: (place: Place) => Promise<void>;
  readonly run: (place: Place, fs: FileSystem) => Promise<Said>;
  /** What does not hold afterwards, as a program started anew on a sound disk finds it. */
  readonly wrongs: (place: Place, said: Said | null) => Promise<readonly string[]>;
}

type Answer =
  | { readonly ok: true }
  | { readonly ok: false; readonly problem: { readonly code: string; readonly name?: string } };

export function saidBy(answer: Answer): Said {
  if (answer.ok) return { done: true };
  return { done: false, code: answer.problem.code, name: answer.problem.name ?? '' };
}
