import { openShim, type Shim } from './shim/shim';
import { lastingLeftovers } from './work/leftovers';
import type { Operation, Said } from './work/operation';
import { OPERATIONS } from './work/operations';
import { clearPlace, makePlace } from './work/place';

const WHEN = ['kill-before', 'kill-mid', 'kill-after'] as const;

/**
 * The program is killed before, in the middle of and after every file operation of everything a person does, and
 * started again: nothing is lost.
 *
 * @param every one case in so many is tried
 */
export async function killSweep(
  every: number,
  operations = OPERATIONS,
): Promise<{ tried: number; failures: readonly string[] }> {
  const shim = await openShim();
  const failures: string[] = [];
  let [tried, number] = [0, 0];
  try {
    for (const operation of operations) {
      const calm = await workedOn(shim, operation, 0, 'none');
      failures.push(...calm.wrongs);
      for (let at = 1; at <= calm.steps; at++) {
        for (const when of WHEN) {
          if (number++ % every !== 0) continue;
          const { killed, wrongs } = await workedOn(shim, operation, at, when);
          tried++;
          failures.push(...wrongs.map((wrong) => `${operation.name}, ${when} at ${at}: ${wrong}`));
          // Else nothing was tried at all.
          if (!killed) failures.push(`${operation.name}, ${when} at ${at}: the program was not killed`);
        }
      }
    }
    return { tried, failures };
  } finally {
    shim.close();
  }
}

async function workedOn(shim: Shim, operation: Operation, at: number, kind: string) {
  const place = makePlace(shim.below);
  try {
    await operation.prepare(place);
    const ran = await shim.atWork('once', operation.name, place.home, place.data, String(at), kind, '0');
    const killed = ran.signal === 'SIGKILL';
    const { said, done }: { said: Said | null; done: readonly string[] } = killed
      ? { said: null, done: [] }
      : JSON.parse(ran.out);
    const wrongs = [...(await operation.wrongs(place, said)), ...(await lastingLeftovers(place))];
    return { killed, steps: done.length, wrongs };
  } finally {
    clearPlace(place);
  }
}
