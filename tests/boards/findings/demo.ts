import { readFileSync } from 'node:fs';
import { freezeDeep } from '../../../boards/base/freeze';
import { type Build, BuildZ } from '../../../boards/document/build';

/** A build of the demo, as it is shipped. */
export function demo(name: 'wired' | 'eight-slips' | 'every-cable'): Build {
  const file = new URL(`../../../boards/library/demo/${name}.build.json`, import.meta.url);
  return freezeDeep(BuildZ.parse(JSON.parse(readFileSync(file, 'utf8'))));
}
