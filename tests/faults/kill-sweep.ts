import { openShim, type Shim } from './shim/shim';
import { lastingLeftovers } from './work/leftovers';
import { calmWrongs, type Operation, type Said } from './work/operation';
import { OPERATIONS } from './work/operations';
import { clearPlace, makePlace } from './work/place';

/** The order of what is done side by side is not the same in every run: one that ends before its kill is run again. */
const RUNS = 5;
/** Of a hundred kills, so many may never be come to; of fewer, one. */
const MISSED_PERCENT = 2;

/**
 * The program is killed before, in the middle of and after every file operation of everything a person does, and
 * started again: nothing is lost. After one operation is before the next, and only a write has a middle.
 *
 * @param every one case in so many is tried
 * @returns how often the program was killed
 */
export async function killSweep(
  every: number,
  operations = OPERATIONS,
): Promise<{ tried: number; failures: readonly string[] }> {
  const shim = await openShim();
  const failures: string[] = [];
  let [tried, missed, number] = [0, 0, 0];
  try {
    for (const operation of operations) {
      const calm = await workedOn(shim, operation, 0, 'none');
      failures.push(...calm.wrongs);
      for (const { at, when } of killsOf(calm.steps)) {
        if (number++ % every !== 0) continue;
        const { killed, wrongs } = await killedIn(shim, operation, at, when);
        if (killed) tried++;
        else missed++;
        failures.push(...wrongs.map((wrong) => `${operation.name}, ${when} at ${at}: ${wrong}`));
      }
    }
    if (missed > Math.max(1, (tried * MISSED_PERCENT) / 100))
      failures.push(`${missed} times beside ${tried} the program had ended before it was to be killed`);
    return { tried, failures };
  } finally {
    shim.close();
  }
}

/** Where the program is killed, by what it does when it is left alone. */
function killsOf(steps: readonly string[]) {
  const kills = steps.flatMap((step, before) => {
    const at = before + 1;
    return [{ at, when: 'kill-before' }, ...(step === 'write' ? [{ at, when: 'kill-mid' }] : [])];
  });
  return [...kills, { at: steps.length, when: 'kill-after' }];
}

/** Runs it until it is killed. One that comes to the step and lives on was not under the shim. */
async function killedIn(shim: Shim, operation: Operation, at: number, when: string) {
  for (let run = 0; run < RUNS; run++) {
    const { killed, steps, wrongs } = await workedOn(shim, operation, at, when);
    const step = steps[at - 1];
    const livedOn = !killed && step !== undefined && (when !== 'kill-mid' || step === 'write');
    if (livedOn) return { killed, wrongs: [...wrongs, 'the program was not killed'] };
    if (killed || wrongs.length > 0) return { killed, wrongs };
  }
  return { killed: false, wrongs: [] };
}

async function workedOn(shim: Shim, operation: Operation, at: number, kind: string) {
  const place = makePlace(shim.below);
  try {
    // By a program that has ended: what one that still runs works on would not be given to another.
    const prepared = await shim.atWork('prepare', operation.name, place.home, place.data);
    if (prepared.code !== 0) throw new Error(`${operation.name} was not prepared: ${prepared.err}`);
    const ran = await shim.atWork('once', operation.name, place.home, place.data, String(at), kind, '0');
    const killed = ran.signal === 'SIGKILL';
    const { said, steps }: { said: Said | null; steps: readonly string[] } = killed
      ? { said: null, steps: [] }
      : JSON.parse(ran.out);
    const found = await (at === 0 ? calmWrongs(operation, place, said) : operation.wrongs(place, said));
    return { killed, steps, wrongs: [...found, ...(await lastingLeftovers(place))] };
  } finally {
    clearPlace(place);
  }
}
