import { readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';

interface PageFile {
  readonly type: string;
  readonly body: Buffer;
}

/** The window's own files by the address they are asked for. Nothing that is not in here is ever served. */
export type PageFiles = ReadonlyMap<string, PageFile>;

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.woff2': 'font/woff2',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.json': 'application/json',
  '.txt': 'text/plain; charset=utf-8',
};

/**
 * Loads the files that the build has listed. Addresses are looked up, never turned into paths, so that
 * there is no address which leads out of the folder.
 */
export async function loadPageFiles(folder: string, names: readonly string[]): Promise<PageFiles> {
  const files = new Map<string, PageFile>();
  for (const name of names) {
    const type = TYPES[extname(name)];
    if (type === undefined) throw new Error(`No media type is known for ${name}`);
    files.set(`/${name}`, { type, body: await readFile(join(folder, name)) });
  }
  const first = files.get('/index.html');
  if (first === undefined) throw new Error('The page has no index.html');
  return files.set('/', first);
}
