import { createHash } from 'node:crypto';
import { lstatSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Every file and folder below a folder: its name, its time and what it holds, so that any change shows. */
export function filesBelow(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .sort()
    .map((name) => {
      const path = join(folder, name);
      const facts = lstatSync(path, { bigint: true });
      const held = facts.isFile() ? createHash('sha256').update(readFileSync(path)).digest('hex') : '';
      return `${name} ${facts.mtimeNs} ${facts.ino} ${held}`;
    });
}
