import type { RecordedWindow } from '../recorded-electron';
import type { Sources } from './flipped-shell';

/** What was seen of a shell: as it ran on the stand-in, and as it is written. */
export interface Evidence {
  readonly window: RecordedWindow;
  readonly sandboxed: boolean;
  readonly served: ReadonlyMap<string, (request: Request) => Response>;
  readonly schemes: readonly unknown[];
  /** A call as it comes from some frame; undefined where it is refused. */
  readonly answersTo: (frame: unknown) => Promise<boolean>;
  /** What the preload script gave to the page, and what came to a listener of it. */
  readonly bridge: Readonly<Record<string, unknown>>;
  readonly exposed: readonly string[];
  readonly heard: readonly unknown[][];
  readonly sources: Sources;
  readonly fuses: unknown;
}

/** One of the twenty points of Electron's page on security, and the settings that would break it. */
export interface Point {
  readonly number: number;
  readonly title: string;
  /** What is not as it has to be; empty where the point holds. */
  readonly broken: (evidence: Evidence) => readonly string[] | Promise<readonly string[]>;
}
