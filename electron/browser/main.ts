import { join } from 'node:path';
import { BUILT } from '../built';
import { type BrowserDoor, openBrowserDoor } from './door';

/** The door as built: with the page that was built along with it. */
export function openBuiltDoor(toOpen: readonly string[]): Promise<BrowserDoor> {
  return openBrowserDoor({ ...BUILT, pageFolder: join(import.meta.dirname, 'renderer'), toOpen });
}
