import { openShim, type Shim } from './shim/shim';
import { lastingLeftovers } from './work/leftovers';
import { calmWrongs, type Operation, type Said } from './work/operation';
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
    // By a program that has ended: what one that still runs works on would not be given to another.
    const prepared = await shim.atWork('prepare', operation.name, place.home, place.data);
    if (prepared.code !== 0) throw new Error(`${operation.name} was not prepared: ${prepared.err}`);
    const ran = await shim.atWork('once', operation.name, place.home, place.data, String(at), kind, '0');
    const killed = ran.signal === 'SIGKILL';
    const { said, done }: { said: Said | null; done: readonly string[] } = killed
      ? { said: null, done: [] }
      : JSON.parse(ran.out);
    const found = await (at === 0 ? calmWrongs(operation, place, said) : operation.wrongs(place, said));
    return { killed, steps: done.length, wrongs: [...found, ...(await lastingLeftovers(place))] };
  } finally {
    clearPlace(place);
  }
}
