import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { inRoot } from '../../electron/start/place.mjs';
import { ERRNO, openShim, type Shim } from './shim/shim';

const FAULTS = [...Object.values(ERRNO).map(String), 'full', 'kill-before', 'kill-mid', 'kill-after'];
/** What the command line may say to a script; 70 would be a bug of ours. */
const EXITS = [0, 2];

/**
 * The command line writes a paper while the disk fails or it is killed: there is the whole file or none, and the
 * exit code says which.
 *
 * @param every one case in so many is tried
 */
export async function commandSweep(every: number): Promise<{ tried: number; failures: readonly string[] }> {
  const shim = await openShim();
  const failures: string[] = [];
  let [tried, number] = [0, 0];
  try {
    const calm = await print(shim, '0 none 0');
    if (calm.code !== 0 || calm.text === null) throw new Error(`Nothing was printed: ${calm.err}`);
    const again = await print(shim, '0 none 0');
    if (again.text !== calm.text) failures.push('the same sheet twice is not the same bytes');
    const steps = readFileSync(shim.log, 'utf8').split('\n').length - 1;
    if (steps < 5) throw new Error('The shim does not catch the command line');
    for (const fault of FAULTS) {
      for (const lasting of fault.startsWith('kill') ? [0] : [0, 1]) {
        for (let at = 1; at <= steps; at++) {
          if (number++ % every !== 0) continue;
          tried++;
          const { code, signal, text, err } = await print(shim, `${at} ${fault} ${lasting}`);
          const when = `${fault} at ${at}${lasting ? ' and for ever' : ''}: `;
          if (text !== null && text !== calm.text) failures.push(`${when}the file is not whole`);
          if (signal === 'SIGKILL') continue;
          if (!EXITS.includes(code ?? -1))
            failures.push(`${when}it ended with ${code}: ${err.slice(0, 200)}`);
          if (code === 0 && text === null) failures.push(`${when}it was said to be written, and is not`);
          if (code === 2 && text !== null) failures.push(`${when}it was said not to be written, and is`);
        }
      }
    }
    return { tried, failures };
  } finally {
    shim.close();
  }
}

async function print(shim: Shim, fault: string) {
  const out = join(shim.below, 'sheet.svg');
  for (const name of readdirSync(shim.below)) rmSync(join(shim.below, name), { recursive: true });
  const build = inRoot('boards', 'library', 'demo', 'wired.build.json');
  const args = [inRoot('dist', 'leadwright.mjs'), 'sheet', build, '--out', out, '--page', '1'];
  const ran = await shim.run(args, fault, { SOURCE_DATE_EPOCH: '1772323200' });
  return { ...ran, text: existsSync(out) ? readFileSync(out, 'utf8') : null };
}
