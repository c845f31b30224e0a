import { ERRNO, openShim } from './shim/shim';
import type { Swept } from './work/sweep';

const FAULTS = [...Object.values(ERRNO), 'short', 'full'];

/** What a save does to files when nothing goes wrong; less than this, and the shim has not caught the program. */
const CAUGHT = ['open', 'read', 'create', 'write', 'fsync', 'stat', 'close', 'rename'];

/**
 * The real host on the real disk, in a program of its own, every file operation of which goes wrong.
 *
 * @param every one case in so many is tried
 */
export async function shimSweep(every: number): Promise<Swept> {
  const shim = await openShim();
  try {
    const ran = await shim.atWork('sweep', shim.below, FAULTS.join(','), String(every));
    if (ran.code !== 0) throw new Error(`The sweep ended with ${ran.code ?? ran.signal}: ${ran.err}`);
    const swept: Swept = JSON.parse(ran.out);
    const missed = CAUGHT.filter((step) => !swept.steps.save?.includes(step));
    if (missed.length > 0) throw new Error(`The shim does not catch: ${missed.join(', ')}`);
    return swept;
  } finally {
    shim.close();
  }
}
