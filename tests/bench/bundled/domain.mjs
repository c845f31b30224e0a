import { fileURLToPath, pathToFileURL } from 'node:url';
import { build as bundle } from 'vite';

const root = fileURLToPath(new URL('../../..', import.meta.url)).replace(/\/$/, '');

/**
 * The modules that are measured, in one file without types, as the window has them.
 *
 * @param {string} name of the bench, for the bundle's own file
 * @param {Readonly<Record<string, readonly string[]>>} names what to take from which module, from the root
 * @param {{ external?: readonly string[] }} [beside] packages that stay outside the bundle
 */
export async function domain(name, names, { external = [] } = {}) {
  const text = Object.entries(names).map(([from, what]) => `export { ${what} } from '${root}${from}';`);
  const entry = `virtual:${name}-bench`;
  const outDir = `${root}/out/bench`;
  await bundle({
    configFile: false,
    root,
    logLevel: 'error',
    publicDir: false,
    plugins: [
      {
        name: entry,
        resolveId: (id) => (id === entry ? `\0${entry}` : undefined),
        load: (id) => (id === `\0${entry}` ? text.join('\n') : undefined),
      },
    ],
    build: {
      outDir,
      emptyOutDir: false,
      ssr: true,
      minify: false,
      rolldownOptions: {
        input: entry,
        output: { entryFileNames: `${name}.mjs`, codeSplitting: false },
        external: [...external],
      },
    },
    ssr: { noExternal: ['zod'] },
  });
  return import(pathToFileURL(`${outDir}/${name}.mjs`).href);
}
