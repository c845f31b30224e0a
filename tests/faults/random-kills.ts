import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bundleAtWork } from './shim/shim';
import { clearPlace, makePlace } from './work/place';
import { robotWrongs, toldIn } from './work/robot';

/** From what the robot tells first on, at some moment of a few saves. */
const MOMENTS_MS = 120;

/**
 * A program that edits, keeps unsaved work and saves without a pause is killed at random moments: what is there then
 * is whole, and never older than told.
 *
 * @returns how many were killed; one that ended by itself counts as a failure
 */
export async function randomKills(kills: number): Promise<{ tried: number; failures: readonly string[] }> {
  const program = await bundleAtWork();
  const below = mkdtempSync(join(tmpdir(), 'lw-kills-'));
  const failures: string[] = [];
  let tried = 0;
  try {
    for (let at = 0; at < kills; at++) {
      const place = makePlace(below);
      const child = spawn(process.execPath, [program, 'robot', place.home, place.data], {
        stdio: ['ignore', 'pipe', 'ignore'],
      });
      let lines = '';
      child.stdout.once('data', () => setTimeout(() => child.kill('SIGKILL'), Math.random() * MOMENTS_MS));
      child.stdout.on('data', (text: Buffer) => {
        lines += text.toString();
      });
      await once(child, 'close');
      const wrongs = await robotWrongs(place, toldIn(lines));
      if (child.signalCode === 'SIGKILL') tried++;
      else failures.push(`kill ${at}: it ended by itself, with ${child.exitCode ?? child.signalCode}`);
      failures.push(...wrongs.map((wrong) => `kill ${at}: ${wrong}`));
      clearPlace(place);
    }
    return { tried, failures };
  } finally {
    rmSync(below, { recursive: true, force: true });
  }
}
