import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inRoot, ROOT } from '../../electron/start/place.mjs';
import { NEVER_DONE } from './never-done';

const SOURCES = ['boards', 'electron', 'renderer'].flatMap((folder) =>
  readdirSync(inRoot(folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(?:[cm]?[jt]sx?|html)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name)),
);

describe('what the code of the program does not do, but for the files that are named', () => {
  it('is looked for in every file of code there is', () => {
    const layers = SOURCES.map((path) => relative(ROOT, path).split(/[/\\]/)[0]);
    for (const layer of ['boards', 'electron', 'renderer'])
      expect(layers.filter((each) => each === layer).length, layer).toBeGreaterThan(50);
  });

  it.each(NEVER_DONE.map((never) => [never.what, never]))('%s', (_, { pattern, but = {} }) => {
    const found = SOURCES.filter((path) => pattern.test(readFileSync(path, 'utf8')));
    const names = found.map((path) => relative(ROOT, path).replaceAll('\\', '/'));
    expect(names.sort()).toEqual(Object.keys(but).sort());
  });
});
