import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { inRoot } from '../../../../electron/start/place.mjs';

/** The shell as text, by path from the root: its code, the packager's settings, the package, the window. */
export type Sources = ReadonlyMap<string, string>;

/** One setting turned round: in which file, what stands there, and what then stands there. */
export interface Flip {
  readonly file: string;
  readonly from: string;
  readonly to: string;
}

const COPIED = ['electron', 'electron/host'];

/** Everything that the twenty points are read from. */
export function sourcesOfShell(): Sources {
  const listed = [
    ...COPIED.flatMap((folder) => filesIn(folder, false)),
    ...filesIn('renderer', true),
    'electron-builder.yml',
    'package.json',
  ];
  return new Map(listed.map((path) => [path, readFileSync(inRoot(path), 'utf8')]));
}

function filesIn(folder: string, deep: boolean): readonly string[] {
  return readdirSync(inRoot(folder), { recursive: deep, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(?:ts|tsx|html)$/.test(entry.name))
    .map((entry) => relative(inRoot(), join(entry.parentPath, entry.name)).replaceAll('\\', '/'));
}

/** The same with one setting turned round. Throws where it does not stand there exactly once. */
export function flipped(sources: Sources, { file, from, to }: Flip): Sources {
  const text = sources.get(file);
  if (text?.split(from).length !== 2) throw new Error(`${file} does not hold “${from}” once`);
  return new Map(sources).set(
    file,
    text.replace(from, () => to),
  );
}

/**
 * Writes the code of the shell to a folder where it can be run, with whatever was turned round in it; all
 * else is taken from where it stands.
 *
 * @returns the folder
 */
export function written(sources: Sources): string {
  mkdirSync(inRoot('out', 'flips'), { recursive: true });
  const folder = mkdtempSync(inRoot('out', 'flips', 'shell-'));
  for (const [path, text] of sources) {
    if (!COPIED.includes(dirname(path))) continue;
    const to = join(folder, path);
    mkdirSync(dirname(to), { recursive: true });
    writeFileSync(to, withFarImports(path, text, sources));
  }
  return join(folder, 'electron');
}

/** What is not copied along is imported from where it stands. */
function withFarImports(path: string, text: string, sources: Sources): string {
  return text.replace(/(from |import\()'(\.{1,2}\/[^']+)'/g, (whole, before: string, to: string) => {
    const target = relative(inRoot(), resolve(inRoot(dirname(path)), to)).replaceAll('\\', '/');
    return sources.has(`${target}.ts`) && COPIED.includes(dirname(target))
      ? whole
      : `${before}'${inRoot(dirname(target), basename(target)).replaceAll('\\', '/')}'`;
  });
}
