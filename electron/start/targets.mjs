import { copyFileSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { inRoot } from './place.mjs';
import { writeSchemas } from './schemas.mjs';

/**
 * What is built, from what, and how. Each is one bundle with everything it needs inside.
 * @typedef {object} Target
 * @property {readonly string[]} sources what it is made from; unchanged sources are not built again
 * @property {string} made a file that is there when it has been built
 * @property {() => import('vite').InlineConfig | Promise<import('vite').InlineConfig>} [config] how it is bundled
 * @property {() => void} [make] how it is made otherwise, of what was built before it
 */

const COMMON = ['boards', 'package-lock.json', 'package.json', 'electron/start/targets.mjs'];
const MACHINE = [...COMMON, 'electron/host', 'electron/paper', 'electron/built.ts'];
const PAGE = [...COMMON, 'renderer', 'assets'];

/** @type {Readonly<Record<'page' | 'door' | 'main' | 'preload' | 'cli' | 'schemas', Target>>} */
export const TARGETS = {
  page: { sources: PAGE, made: 'dist/renderer/index.html', config: pageConfig },
  // The machine's bundles hold the list of the page's files, so they follow the page.
  door: {
    sources: [...MACHINE, ...PAGE, 'electron/browser'],
    made: 'dist/browser-door.mjs',
    config: () => nodeConfig('electron/browser/main.ts', 'browser-door.mjs', 'es', { page: pageNames() }),
  },
  main: {
    sources: [...MACHINE, ...PAGE, ...shellFiles()],
    made: 'dist/main.cjs',
    config: () => nodeConfig('electron/main.ts', 'main.cjs', 'cjs', { page: pageNames() }),
  },
  preload: {
    sources: [...COMMON, ...shellFiles()],
    made: 'dist/preload.cjs',
    config: () => nodeConfig('electron/preload.ts', 'preload.cjs', 'cjs'),
  },
  cli: {
    sources: [...MACHINE, 'electron/cli'],
    made: 'dist/leadwright.mjs',
    config: () =>
      nodeConfig('electron/cli/main.ts', 'leadwright.mjs', 'es', { banner: '#!/usr/bin/env node' }),
  },
  // The command line prints them, so they follow it.
  schemas: {
    sources: [...MACHINE, 'electron/cli', 'electron/start/schemas.mjs'],
    made: 'dist/schemas/case.schema.json',
    make: writeSchemas,
  },
};

function shellFiles() {
  return readdirSync(inRoot('electron'))
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `electron/${name}`);
}

/** @returns {Promise<import('vite').InlineConfig>} */
async function pageConfig() {
  const { default: react } = await import('@vitejs/plugin-react');
  return {
    ...BASE,
    root: inRoot('renderer'),
    plugins: [react()],
    publicDir: false,
    // One file with everything in it, so that zod is told to build no code from text here too.
    worker: { format: 'es', rolldownOptions: { output: { codeSplitting: false } } },
    build: {
      outDir: inRoot('dist', 'renderer'),
      emptyOutDir: true,
      // Small pictures in the code would be data: addresses, which the page's policy does not allow.
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      chunkSizeWarningLimit: 2_000,
      rolldownOptions: {
        output: {
          codeSplitting: {
            groups: [
              // Together, so that zod is told to build no code from text before any schema is made.
              { name: 'zod', test: /node_modules[\\/]zod[\\/]|renderer[\\/]strict-zod/ },
              // One file in place of twenty small ones that the start would wait for one by one.
              { name: 'boards', test: /[\\/]boards[\\/](?!library)/ },
              { name: 'window', test: /renderer[\\/](actions|files|look|store|words)[\\/]/ },
            ],
          },
        },
      },
    },
  };
}

/**
 * @param {string} entry
 * @param {string} file
 * @param {'es' | 'cjs'} format
 * @param {{ readonly banner?: string, readonly page?: readonly string[] }} [more] the files of the built page
 *   where the program serves it
 * @returns {import('vite').InlineConfig}
 */
function nodeConfig(entry, file, format, { banner = '', page = [] } = {}) {
  return {
    ...BASE,
    root: inRoot(),
    publicDir: false,
    plugins: [paperKit()],
    define: {
      LEADWRIGHT_VERSION: JSON.stringify(JSON.parse(readFileSync(inRoot('package.json'), 'utf8')).version),
      LEADWRIGHT_PAGE: JSON.stringify(page),
    },
    ssr: { noExternal: true, external: ['electron'] },
    build: {
      ssr: true,
      target: 'node20',
      outDir: inRoot('dist'),
      emptyOutDir: false,
      minify: false,
      rolldownOptions: {
        input: inRoot(entry),
        external: ['electron', /^node:/, ...builtinModules],
        output: { format, entryFileNames: file, banner, codeSplitting: false },
      },
    },
  };
}

/**
 * The fonts and the drawing program that paper is made with, beside the bundles: they are read when
 * they are first wanted, and a bundle that held them would be slow to start.
 * @returns {import('vite').Plugin}
 */
function paperKit() {
  return {
    name: 'paper-kit',
    writeBundle() {
      /** @type {Record<string, string>} */
      const files = JSON.parse(readFileSync(inRoot('electron', 'paper', 'kit-files.json'), 'utf8'));
      mkdirSync(inRoot('dist', 'paper'), { recursive: true });
      for (const [name, path] of Object.entries(files))
        copyFileSync(inRoot('node_modules', path), inRoot('dist', 'paper', name));
    },
  };
}

const BASE = { configFile: /** @type {const} */ (false), logLevel: /** @type {const} */ ('warn') };

/** Every file of the built page, as its address without the leading slash. */
function pageNames() {
  const found = readdirSync(inRoot('dist', 'renderer'), { recursive: true, withFileTypes: true });
  const top = inRoot('dist', 'renderer');
  return found
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath}/${entry.name}`.slice(top.length + 1).replaceAll('\\', '/'))
    .sort();
}
