import { existsSync, lstatSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DISK } from '../../../electron/host/file-system';
import { readTextFile } from '../../../electron/host/read-file';
import { saveFile } from '../../../electron/host/save-file';
import { FAULTS, faultyDisk, type Trouble } from './faulty-disk';

const FORMER = `${'The former work. '.repeat(400)}\n`;
const NEXT = `${'The next work, which is longer than the former. '.repeat(400)}\n`;

/** What lies at the place that is saved to, and what the window believes of it. */
const SITUATIONS = ['a new file', 'a file', 'a file as last read', 'a file touched since', 'a link'] as const;
type Situation = (typeof SITUATIONS)[number];

async function prepare(
  folder: string,
  situation: Situation,
): Promise<{ path: string; expected: string | null }> {
  const path = join(folder, 'work.build.json');
  if (situation === 'a new file') return { path, expected: null };
  if (situation === 'a link') {
    writeFileSync(join(folder, 'elsewhere.json'), FORMER);
    symlinkSync(join(folder, 'elsewhere.json'), path);
    return { path, expected: null };
  }
  writeFileSync(path, FORMER);
  if (situation === 'a file') return { path, expected: null };
  const read = await readTextFile(DISK, path);
  if (situation === 'a file touched since') writeFileSync(path, FORMER);
  return { path, expected: read.ok ? read.value.stamp : null };
}

/** One save with one trouble; the number of file operations it took. */
async function trySave(situation: Situation, trouble: Trouble): Promise<number> {
  const folder = await mkdtemp(join(tmpdir(), 'lw-fault-'));
  try {
    const { path, expected } = await prepare(folder, situation);
    const before = readdirSync(folder);
    const disk = faultyDisk(trouble);
    const saved = await saveFile(disk, { path, text: NEXT, expected });
    const now = existsSync(path) ? readFileSync(path, 'utf8') : null;
    const former = situation === 'a new file' ? null : FORMER;
    expect(now, `${saved.ok ? 'said to be saved' : 'said to have failed'}`).toBe(saved.ok ? NEXT : former);
    const left = readdirSync(folder).filter((name) => !before.includes(name) && name !== 'work.build.json');
    if (!disk.failed.includes('remove')) expect(left).toEqual([]);
    if (situation === 'a link') expect(lstatSync(path).isSymbolicLink()).toBe(true);
    return disk.log.length;
  } finally {
    await rm(folder, { recursive: true });
  }
}

describe('A save during which the disk fails leaves the former file whole or the next one, and says which', () => {
  test.each(SITUATIONS)('%s', { timeout: 60_000 }, async (situation) => {
    const steps = await trySave(situation, { at: Number.POSITIVE_INFINITY, fault: 'EIO', lasting: false });
    expect(steps).toBeGreaterThan(10);
    let cases = 0;
    for (const fault of FAULTS) {
      for (let at = 0; at < steps; at++) {
        for (const lasting of [false, true]) {
          await trySave(situation, { at, fault, lasting });
          cases++;
        }
      }
    }
    expect(cases).toBeGreaterThan(200);
  });
});

test('A folder that cannot be flushed after the save makes it saved, not yet surely on disk', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'lw-fault-'));
  const path = join(folder, 'work.build.json');
  const calm = faultyDisk({ at: Number.POSITIVE_INFINITY, fault: 'EIO', lasting: false });
  await saveFile(calm, { path, text: FORMER, expected: null });
  const disk = faultyDisk({ at: calm.log.lastIndexOf('sync'), fault: 'EIO', lasting: false });
  await rm(path);
  const saved = await saveFile(disk, { path, text: NEXT, expected: null });
  expect(disk.failed).toEqual(['sync']);
  expect(saved).toMatchObject({ ok: true, value: { durable: false } });
  expect(readFileSync(path, 'utf8')).toBe(NEXT);
  await rm(folder, { recursive: true });
});
