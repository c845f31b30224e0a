import { existsSync, readdirSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { DISK } from '../../../electron/host/file-system';
import { saveFile } from '../../../electron/host/save-file';
import type { Place } from './place';

const TWO_HOURS_S = 7_200;

/** Every hidden file that a save may have left, in both folders of a machine. */
export function leftovers(place: Place): readonly string[] {
  return [place.home, place.data].filter(existsSync).flatMap((top) =>
    readdirSync(top, { recursive: true, encoding: 'utf8' })
      .map((name) => join(top, name))
      .filter((path) => /[/\\]\.[^/\\]*\.tmp$/.test(path)),
  );
}

/** What of them is still there after the next save beside each, two hours later. */
export async function lastingLeftovers(place: Place): Promise<readonly string[]> {
  for (const path of leftovers(place)) {
    const then = Date.now() / 1000 - TWO_HOURS_S;
    utimesSync(path, then, then);
    await saveFile(DISK, { path: join(path, '..', 'saved-later.json'), text: 'x', expected: null });
  }
  return leftovers(place).map((path) => `is left for ever: ${path}`);
}
