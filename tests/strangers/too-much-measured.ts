import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inRoot } from '../../electron/start/place.mjs';
import { buildCommand, leadwright } from '../electron/cli/run-cli';
import { makeHuge, SMALL_HEAP, TOO_MUCH } from './too-much';

/** The time of the processor and the memory that a refusal takes at most, the program's own start included. */
const MOST = { ms: 1_000, mb: 300 };
/** The least of so many runs counts: other work on the machine makes none of them cheaper. */
const RUNS = 3;

interface Used {
  readonly ms: number;
  readonly mb: number;
}

/**
 * Has files refused that hold a thousand times what a file may hold.
 *
 * @param tell told what each took
 * @returns those that took too much
 */
export async function measureTooMuch(tell: (words: string) => void): Promise<readonly string[]> {
  await buildCommand();
  const folder = mkdtempSync(join(tmpdir(), 'lw-much-'));
  const path = join(folder, 'much.board.json');
  try {
    const failures: string[] = [];
    const files = TOO_MUCH.map(([what, text]) => [what, () => writeFileSync(path, text())] as const);
    for (const [what, make] of [...files, ['bytes', () => makeHuge(path)] as const]) {
      make();
      const runs: Used[] = [];
      for (let run = 0; run < RUNS; run++) runs.push(await used(path, join(folder, 'usage')));
      const [ms, mb] = [Math.min(...runs.map((each) => each.ms)), Math.min(...runs.map((each) => each.mb))];
      const said = `a thousand times too many ${what}: ${ms.toFixed(0)} ms, ${mb.toFixed(0)} MB`;
      tell(said);
      if (!(ms <= MOST.ms && mb <= MOST.mb))
        failures.push(`${said}, of at most ${MOST.ms} ms and ${MOST.mb} MB`);
    }
    return failures;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function used(path: string, usage: string): Promise<Used> {
  rmSync(usage, { force: true });
  const nodeOptions = [...SMALL_HEAP, '--import', inRoot('tests', 'strangers', 'told-usage.mjs')];
  const { code, err } = await leadwright(['check', path], { nodeOptions, env: { LEADWRIGHT_USAGE: usage } });
  if (code !== 2) throw new Error(`It was not refused: ${code} ${err.slice(0, 200)}`);
  return JSON.parse(readFileSync(usage, 'utf8'));
}
