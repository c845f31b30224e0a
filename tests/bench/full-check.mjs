import { readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';

/**
 * How long a full check of the demo build takes on a copy that nothing is known of yet, beside reading and
 * writing the same build as JSON: what any program that handles the file has to spend.
 */
const ROUNDS = 41;
const root = fileURLToPath(new URL('../..', import.meta.url));
const text = readFileSync(`${root}/boards/library/demo/wired.build.json`, 'utf8');

const { analyse } = await bundled('boards/analyse.ts');
const { parseDocument } = await bundled('boards/document/parse.ts');

const once = { check: [], parse: [], json: [] };
for (let round = 0; round < ROUNDS; round++) {
  const build = timed(once.parse, () => parseDocument(text).value);
  // What is remembered is remembered by identity, so nothing of the round before is.
  timed(once.check, () => analyse(structuredClone(build)));
  timed(once.json, () => JSON.stringify(JSON.parse(text)));
}
const [check, parse, json] = [once.check, once.parse, once.json].map(median);
console.log(
  `Full check of the demo build: ${check.toFixed(2)} ms (first ${once.check[0].toFixed(1)} ms), ` +
    `opening it ${parse.toFixed(2)} ms, as JSON there and back ${json.toFixed(2)} ms, ` +
    `median of ${ROUNDS}: a check is ${(check / json).toFixed(1)} times that`,
);

/** One module of the domain with all it needs, as the window has it. */
async function bundled(entry) {
  const outDir = `${root}/out/bench`;
  const fileName = `${entry.replace(/\W/g, '-')}.mjs`;
  await build({
    configFile: false,
    root,
    logLevel: 'error',
    publicDir: false,
    build: {
      outDir,
      emptyOutDir: false,
      ssr: true,
      minify: false,
      rolldownOptions: {
        input: `${root}/${entry}`,
        output: { entryFileNames: fileName, codeSplitting: false },
      },
    },
    ssr: { noExternal: true },
  });
  return import(pathToFileURL(`${outDir}/${fileName}`).href);
}

function timed(times, work) {
  const began = performance.now();
  const value = work();
  times.push(performance.now() - began);
  return value;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}
