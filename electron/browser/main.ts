import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { BUILT } from '../built';
import { type BrowserDoor, openBrowserDoor } from './door';

/** The door as built: with the page that was built along with it. */
export function openBuiltDoor(toOpen: readonly string[]): Promise<BrowserDoor> {
  const beside = (name: string) => join(import.meta.dirname, name);
  return openBrowserDoor({
    ...BUILT,
    pageFolder: beside('renderer'),
    readPaperFile: (name) => readFile(join(beside('paper'), name)),
    toOpen,
  });
}
