import { randomBytes } from 'node:crypto';

/**
 * The only place that knows which path a handle of the page stands for. A handle is given out for what
 * a person has chosen or been shown; nobody can guess one, and it says nothing about the path.
 */
export interface Handles {
  /** The same path always has the same handle. */
  readonly give: (path: string) => string;
  readonly pathOf: (handle: string) => string | null;
}

export function makeHandles(): Handles {
  const paths = new Map<string, string>();
  const handles = new Map<string, string>();
  return {
    give: (path) => {
      const known = handles.get(path);
      if (known !== undefined) return known;
      const handle = randomBytes(24).toString('base64url');
      handles.set(path, handle);
      paths.set(handle, path);
      return handle;
    },
    pathOf: (handle) => paths.get(handle) ?? null,
  };
}
