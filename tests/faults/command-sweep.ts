import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { inRoot } from '../../electron/start/place.mjs';
import { ERRNO, openShim, type Shim } from './shim/shim';

const FAULTS = [...Object.values(ERRNO).map(String), 'full', 'stop', 'kill-before', 'kill-mid', 'kill-after'];
/** What ends the program, or asks it to end, is not tried for ever; a full disk is full for ever. */
const lastingOf = (fault: string) => (/^(kill|stop)/.test(fault) ? [0] : fault === 'full' ? [1] : [0, 1]);
/** Of these only a write goes wrong. */
const OF_WRITES = ['full', 'kill-mid'];
/** What the command line may say to a script; 70 would be a bug of ours. */
const EXITS = [0, 2];

/**
 * The command line writes a paper while the disk fails, it is asked to end, or it is killed: there is the whole file
 * or none, and the exit code says which. Only a kill may leave something lying about.
 *
 * @param every one case in so many is tried
 */
export async function commandSweep(every: number): Promise<{ tried: number; failures: readonly string[] }> {
  const shim = await openShim();
  const failures: string[] = [];
  let [tried, number, asked, ended] = [0, 0, 0, 0];
  try {
    const calm = await print(shim, '0 none 0');
    if (calm.code !== 0 || calm.text === null) throw new Error(`Nothing was printed: ${calm.err}`);
    const again = await print(shim, '0 none 0');
    if (again.text !== calm.text) failures.push('the same sheet twice is not the same bytes');
    const steps = readFileSync(shim.log, 'utf8')
      .split('\n')
      .flatMap((line) => line.split('\t')[1] ?? []);
    if (steps.length < 5) throw new Error('The shim does not catch the command line');
    for (const fault of FAULTS) {
      for (const lasting of lastingOf(fault)) {
        for (const [before, step] of steps.entries()) {
          const at = before + 1;
          if ((OF_WRITES.includes(fault) && step !== 'write') || number++ % every !== 0) continue;
          // What was killed before the next step was killed after this one.
          if (fault === 'kill-after' && at < steps.length) continue;
          tried++;
          if (fault === 'stop') asked++;
          const { code, signal, text, err, left } = await print(shim, `${at} ${fault} ${lasting}`);
          const when = `${fault} at ${at}${lasting ? ' and for ever' : ''}: `;
          if (text !== null && text !== calm.text) failures.push(`${when}the file is not whole`);
          if (signal === 'SIGKILL') continue;
          // A disk that fails for ever does not let go of anything either.
          if (!lasting && left.length > 0) failures.push(`${when}${left.join(', ')} was left lying about`);
          if (signal === 'SIGTERM') {
            ended += 1;
            continue;
          }
          if (!EXITS.includes(code ?? -1))
            failures.push(`${when}it ended with ${code}: ${err.slice(0, 200)}`);
          if (code === 0 && text === null) failures.push(`${when}it was said to be written, and is not`);
          if (code === 2 && text !== null) failures.push(`${when}it was said not to be written, and is`);
        }
      }
    }
    // At the very end it may be done before it hears of it.
    if (ended < asked / 2) failures.push(`it ended ${ended} of ${asked} times when it was asked to`);
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
  const left = readdirSync(shim.below).filter((name) => name !== 'sheet.svg');
  return { ...ran, left, text: existsSync(out) ? readFileSync(out, 'utf8') : null };
}
