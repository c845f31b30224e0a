import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { inRoot } from './place.mjs';

const KINDS = ['build', 'board', 'case'];

/**
 * Writes the JSON Schema of each kind of file, as the built command line prints it, for editors to
 * complete and check by: a file says in "$schema" where its schema lies.
 */
export function writeSchemas() {
  const folder = inRoot('dist', 'schemas');
  mkdirSync(folder, { recursive: true });
  for (const kind of KINDS) {
    const text = execFileSync(process.execPath, [inRoot('dist', 'leadwright.mjs'), 'schema', kind]);
    writeFileSync(`${folder}/${kind}.schema.json`, text);
  }
}
