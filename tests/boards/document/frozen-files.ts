import { readdirSync, readFileSync } from 'node:fs';
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
