import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BuildZ } from '../../../boards/document/build';
import { FORMATS } from '../../../boards/document/formats';
import { MIGRATIONS } from '../../../boards/document/migrations';
import { parseDocument } from '../../../boards/document/parse';
import { serialize } from '../../../boards/document/serialize';
import { inRoot } from '../../../electron/start/place.mjs';
import { FROZEN_FILES, FROZEN_VERSIONS } from './frozen-files';
import { fieldsIn, fieldsOf, wordsOf } from './schema-fields';

const LEAST_FILES = 20;

function opened(text: string) {
  const result = parseDocument(text);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

describe('files that were frozen when their version was made', () => {
  it('are there for every version that a file can have', () => {
    const newest = Math.max(...Object.values(MIGRATIONS).map((chain) => chain.length + 1));
    expect([...FROZEN_VERSIONS].sort()).toEqual(
      Array.from({ length: newest }, (_, at) => `version-${at + 1}`),
    );
    for (const version of FROZEN_VERSIONS)
      expect(FROZEN_FILES.filter((file) => file.version === version).length).toBeGreaterThanOrEqual(
        LEAST_FILES,
      );
  });

  it.each(FROZEN_FILES)('$version/$name opens, and is saved as the same', ({ version, text }) => {
    const document = opened(text);
    const saved = serialize(document);
    expect(serialize(opened(saved))).toBe(saved);
    // Of today's version byte by byte; an older one is saved in today's.
    if (version === `version-${document.version}`) expect(saved).toBe(text);
  });

  it.each(FORMATS)('hold every field of a $kind', ({ format, schema }) => {
    const today = FROZEN_FILES.filter(({ text }) => text.includes(`"format": "${format}"`));
    const held = new Set(today.flatMap(({ text }) => fieldsIn(schema, opened(text))));
    const missing = fieldsOf(schema).filter((field) => !held.has(field));
    expect(missing, 'a new field stands in tests/golden/version-N/everything.* too: put it in').toEqual([]);
  });

  it('name every word that was ever written in a file, and it may still be written', () => {
    const frozen = readFileSync(inRoot('tests', 'golden', 'version-1', 'words.txt'), 'utf8').split('\n');
    expect(frozen.length).toBeGreaterThan(100);
    const today = new Set(wordsOf(BuildZ));
    expect(frozen.filter((word) => word !== '' && !today.has(word))).toEqual([]);
  });
});
