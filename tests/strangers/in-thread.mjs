import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { inRoot } from '../../electron/start/place.mjs';
import { domain } from '../bench/bundled/domain.mjs';

/** No file takes the program longer, not even on a busy machine; one that does hangs it. */
const HANGS_MS = 30_000;
const LOOK_MS = 500;

/**
 * Runs one function of a module in a thread of its own that is ended when one of the files hangs.
 *
 * @template Report
 * @param {string} module from the root, "/tests/strangers/run-guided.ts"
 * @param {string} name of the function; it is given `run`, and tells the number of each file before it reads it
 * @param {object} run
 * @returns {Promise<{ report: Report, hung: null } | { report: null, hung: number }>} the number of one that hung
 */
export async function inThread(module, name, run) {
  await domain(name, { [module]: [name] });
  const bundle = pathToFileURL(inRoot('out', 'bench', `${name}.mjs`)).href;
  const at = new Int32Array(new SharedArrayBuffer(4));
  const worker = new Worker(new URL('worker.mjs', import.meta.url), {
    workerData: { bundle, name, run, at },
  });
  try {
    return await new Promise((resolve, reject) => {
      let [last, since] = [-1, performance.now()];
      const timer = setInterval(() => {
        const now = Atomics.load(at, 0);
        if (now !== last) [last, since] = [now, performance.now()];
        else if (performance.now() - since > HANGS_MS) resolve({ report: null, hung: now });
      }, LOOK_MS);
      worker.once('message', (report) => resolve({ report, hung: null }));
      worker.once('error', reject);
      worker.once('exit', () => clearInterval(timer));
    });
  } finally {
    await worker.terminate();
  }
}
