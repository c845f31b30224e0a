import { readdirSync, readFileSync } from 'node:fs';
import type { Build } from '../../../boards/document/build';
import type { DocumentKind } from '../../../boards/document/document';
import { parseDocument } from '../../../boards/document/parse';
import { inRoot } from '../../../electron/start/place.mjs';

/**
 * The versions that there are; files of each stand in a folder of their own and are never changed once it is
 * released.
 */
export const FROZEN_VERSIONS = readdirSync(inRoot('tests', 'golden'));

export const FROZEN_FILES = FROZEN_VERSIONS.flatMap((version) =>
  readdirSync(inRoot('tests', 'golden', version))
    .filter((name) => name.endsWith('.json'))
    .map((name) => ({ version, name, text: readFileSync(inRoot('tests', 'golden', version, name), 'utf8') })),
);

/** The text of the frozen document that has every field there is. */
export function everythingOf(kind: DocumentKind): string {
  return readFileSync(inRoot('tests', 'golden', 'version-1', `everything.${kind}.json`), 'utf8');
}

/** The build in a text, opened as the program opens a file; throws where there is none. */
export function openedBuild(text: string): Build {
  const read = parseDocument(text);
  if (!read.ok || read.value.format !== 'leadwright/build') throw new Error(JSON.stringify(read));
  return read.value;
}
