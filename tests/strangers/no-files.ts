import { execFileSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, symlinkSync } from 'node:fs';
import { createServer } from 'node:net';

/** A thing of the disk that is no ordinary file, and what is said of it. */
interface NoFile {
  readonly problem: 'special' | 'not-found' | 'folder';
  /** Lays one at a path; gives back what ends it, where something has to. */
  readonly lay: (path: string) => Promise<(() => void) | undefined>;
}

function laid(problem: NoFile['problem'], lay: (path: string) => void): NoFile {
  return {
    problem,
    lay: async (path) => {
      lay(path);
      return undefined;
    },
  };
}

export const NO_FILES = {
  pipe: laid('special', (path) => execFileSync('mkfifo', [path])),
  socket: {
    problem: 'special',
    lay: async (path: string) => {
      const server = createServer().listen(path);
      await once(server, 'listening');
      return () => void server.close();
    },
  },
  'device without an end': laid('special', (path) => symlinkSync('/dev/zero', path)),
  'terminal of nobody': laid('special', (path) => symlinkSync('/dev/tty', path)),
  folder: laid('folder', (path) => mkdirSync(path)),
  'link to nothing': laid('not-found', (path) => symlinkSync('not-there', path)),
  'link to itself': laid('special', (path) => symlinkSync(path, path)),
} as const satisfies Readonly<Record<string, NoFile>>;
