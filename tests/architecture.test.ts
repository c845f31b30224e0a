import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { parseSync } from 'vite';
import { describe, expect, test } from 'vitest';
import { FOLDERS, IMPORTS_ELECTRON, PACKAGES } from './architecture-rules';

const ROOT = resolve(import.meta.dirname, '..');

interface Import {
  readonly file: string;
  readonly specifier: string;
}

interface Source {
  readonly file: string;
  readonly lines: number;
  readonly imports: readonly string[];
  readonly reExportsAll: boolean;
  readonly hasDefault: boolean;
}

function filesBelow(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(ts|tsx|mjs)$/.test(name))
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .sort();
}

/** Reads a file with a real parser: types count as imports, and so does import(). */
function read(file: string): Source {
  const text = readFileSync(join(ROOT, file), 'utf8');
  const { module, errors } = parseSync(file, text);
  expect(errors, file).toEqual([]);
  const exports = module.staticExports.flatMap((one) => one.entries);
  return {
    file,
    lines: text.split('\n').length,
    imports: [
      ...module.staticImports.map((one) => one.moduleRequest.value),
      ...exports.flatMap((entry) => entry.moduleRequest?.value ?? []),
      ...module.dynamicImports.flatMap(({ moduleRequest }) => {
        const literal = /^(['"])(.*)\1$/.exec(text.slice(moduleRequest.start, moduleRequest.end));
        return literal?.[2] ?? [];
      }),
    ],
    reExportsAll: exports.some((entry) => entry.importName.kind.startsWith('All')),
    hasDefault: exports.some((entry) => entry.exportName.kind === 'Default'),
  };
}

const layers = ['boards', 'electron', 'renderer'] as const;
const sources = layers.flatMap(filesBelow).map(read);
const imports: Import[] = sources.flatMap(({ file, imports: specifiers }) =>
  specifiers.map((specifier) => ({ file, specifier })),
);

/** The longest listed folder that holds a file. */
function folderOf(file: string): string | undefined {
  return Object.keys(FOLDERS)
    .filter((folder) => file === folder || file.startsWith(`${folder}/`))
    .sort((a, b) => b.length - a.length)[0];
}

const known = new Map(sources.map((source) => [source.file, source]));

/** The file that a relative import means; the bare path where there is none (a style sheet, a data file). */
function targetOf({ file, specifier }: Import): string {
  const target = relative(ROOT, resolve(ROOT, dirname(file), specifier)).replaceAll('\\', '/');
  return [target, `${target}.ts`, `${target}.tsx`].find((name) => known.has(name)) ?? target;
}

function packageOf(specifier: string): string {
  if (specifier.startsWith('node:')) return 'node:*';
  return specifier.startsWith('@')
    ? specifier.split('/').slice(0, 2).join('/')
    : (specifier.split('/')[0] ?? '');
}

const isRelative = (specifier: string) => specifier.startsWith('.');

describe('the house', () => {
  test('something was looked at in every layer', () => {
    for (const layer of layers) {
      expect(sources.filter(({ file }) => file.startsWith(`${layer}/`)).length, layer).toBeGreaterThan(10);
    }
    expect(imports.length).toBeGreaterThan(200);
  });

  test('every file lies in a listed folder', () => {
    expect(sources.map(({ file }) => file).filter((file) => folderOf(file) === undefined)).toEqual([]);
  });

  test('every folder of the list exists', () => {
    const used = new Set(sources.map(({ file }) => folderOf(file)));
    expect(Object.keys(FOLDERS).filter((folder) => !used.has(folder))).toEqual([]);
  });

  test('a folder imports only the folders it may know, types included', () => {
    const strangers = imports
      .filter((one) => isRelative(one.specifier))
      .flatMap((one) => {
        const from = folderOf(one.file);
        const to = folderOf(targetOf(one));
        if (from === undefined || to === undefined) return [`${one.file} imports ${one.specifier}`];
        return from === to || FOLDERS[from]?.includes(to) ? [] : [`${one.file} (${from}) imports ${to}`];
      });
    expect(strangers).toEqual([]);
  });

  test('a layer uses only the packages on its list', () => {
    const strangers = imports
      .filter((one) => !isRelative(one.specifier))
      .flatMap((one) => {
        const folder = folderOf(one.file) ?? '';
        const list = Object.keys(PACKAGES).filter((key) => folder === key || folder.startsWith(`${key}/`));
        const closest = list.sort((a, b) => b.length - a.length)[0] ?? '';
        return PACKAGES[closest]?.includes(packageOf(one.specifier))
          ? []
          : [`${one.file} imports ${one.specifier}`];
      });
    expect(strangers).toEqual([]);
  });

  test('only the shell imports electron', () => {
    const importers = imports.filter(({ specifier }) => specifier === 'electron').map(({ file }) => file);
    expect([...new Set(importers)].sort()).toEqual(IMPORTS_ELECTRON);
  });

  test('no file imports itself through others', () => {
    const next = (file: string) =>
      (known.get(file)?.imports ?? [])
        .filter(isRelative)
        .map((specifier) => targetOf({ file, specifier }))
        .filter((target) => known.has(target));
    const finished = new Set<string>();
    const circles: string[] = [];
    const visit = (file: string, trail: readonly string[]) => {
      if (trail.includes(file)) circles.push([...trail.slice(trail.indexOf(file)), file].join(' -> '));
      else if (!finished.has(file)) {
        for (const target of next(file)) visit(target, [...trail, file]);
        finished.add(file);
      }
    };
    for (const file of known.keys()) visit(file, []);
    expect(circles).toEqual([]);
  });

  test('no barrels and no default exports', () => {
    expect(
      sources.filter((source) => source.reExportsAll || source.hasDefault).map(({ file }) => file),
    ).toEqual([]);
  });

  test('no file is longer than 500 lines', () => {
    expect(sources.filter(({ lines }) => lines > 500).map(({ file, lines }) => `${file}: ${lines}`)).toEqual(
      [],
    );
  });
});
