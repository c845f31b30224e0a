import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bundleAtWork } from './shim/shim';
import { clearPlace, makePlace, startAt } from './work/place';
import { numberIn, robotFile } from './work/robot';

/** A program that saves without a pause is killed at random moments: the file is whole, and never older than told. */
export async function randomKills(kills: number): Promise<{ tried: number; failures: readonly string[] }> {
  const program = await bundleAtWork();
  const below = mkdtempSync(join(tmpdir(), 'lw-kills-'));
  const failures: string[] = [];
  try {
    for (let at = 0; at < kills; at++) {
      const place = makePlace(below);
      const child = spawn(process.execPath, [program, 'robot', place.home, place.data], {
        stdio: ['ignore', 'pipe', 'ignore'],
      });
      let told = 0;
      child.stdout.on('data', (text: Buffer) => {
        told = Number(text.toString().trim().split('\n').at(-1) ?? told);
        // From the first confirmed save on, at some moment of a few saves.
        setTimeout(() => child.kill('SIGKILL'), Math.random() * 60);
      });
      await once(child, 'close');
      const { host, calls } = startAt(place);
      const opened = await calls.open({ handle: host.handles.give(robotFile(place)) });
      const found = opened.ok ? numberIn(opened.value.text) : null;
      if (found === null || found < told)
        failures.push(`kill ${at}: told ${told}, found ${found ?? 'nothing whole'}`);
      clearPlace(place);
    }
    return { tried: kills, failures };
  } finally {
    rmSync(below, { recursive: true, force: true });
  }
}
