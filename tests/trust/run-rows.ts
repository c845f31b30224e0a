import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { ALL_ROWS } from './all-rows';
import type { Tried } from './row';
import type { RowResult } from './verdict.mjs';

/** Which rows are wanted, as `trust.mjs` says: ids, "long" for the long ones alone; else all but the long ones. */
const wanted = process.env.LEADWRIGHT_TRUST_ROWS ?? '';
const OUT = join(import.meta.dirname, '..', '..', 'out', 'trust');
const HOURS_MS = 3_600_000;

for (const { id, promise, target, long = false, run } of ALL_ROWS) {
  if (!(wanted === '' ? !long : wanted === 'long' ? long : wanted.split(',').includes(id))) continue;
  test(`${id}: ${promise}`, { timeout: 6 * HOURS_MS }, async () => {
    const tried: Tried = await run();
    const result: RowResult = { id, promise, target, long, ...tried };
    mkdirSync(OUT, { recursive: true });
    writeFileSync(join(OUT, `${id}.json`), JSON.stringify(result));
    expect(result.failures.slice(0, 20)).toEqual([]);
  });
}

// What is promised by now, for what came of a row may be of a promise that it no longer makes.
beforeAll(() => {
  const promises = ALL_ROWS.map(({ id, promise, target }) => [id, { promise, target }]);
  mkdirSync(OUT, { recursive: true });
  writeFileSync(join(OUT, 'promises.json'), JSON.stringify(Object.fromEntries(promises)));
});

// So that a run of rows that do not exist is not taken for one that held.
test('There are rows to run', () => expect(ALL_ROWS).not.toEqual([]));
