import type { FileSystem } from '../../../electron/host/file-system';
import type { Place } from './place';

/** What the program told the person. */
export type Said =
  | { readonly done: true }
  | { readonly done: false; readonly code: string; readonly name: string };

/** One thing a person does that writes files, and what has to be so afterwards, whatever went wrong. */
export interface Operation {
  readonly name: string;
  /** Lays out what is there before, on a sound disk. */
  readonly prepare: (place: Place) => Promise<void>;
  /** Null where the program says nothing of it, done or not. */
  readonly run: (place: Place, fs: FileSystem) => Promise<Said | null>;
  /**
   * What does not hold afterwards, as a program started anew on a sound disk finds it.
   *
   * @param said null where nothing was, or where the program was killed before it could
   */
  readonly wrongs: (place: Place, said: Said | null) => Promise<readonly string[]>;
}

type Answer =
  | { readonly ok: true }
  | { readonly ok: false; readonly problem: { readonly code: string; readonly name?: string } };

export function saidBy(answer: Answer): Said {
  if (answer.ok) return { done: true };
  return { done: false, code: answer.problem.code, name: answer.problem.name ?? '' };
}

/** What does not hold where nothing went wrong: one that is not done then would pass whatever goes wrong. */
export async function calmWrongs({ wrongs }: Operation, place: Place, said: Said | null) {
  if (said?.done === false) return [`refused with nothing wrong, as ${said.code}`];
  return wrongs(place, said ?? { done: true });
}
