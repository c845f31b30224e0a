import {
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { calmWrongs, type Operation, type Said } from '../work/operation';
import { OPERATIONS } from '../work/operations';
import { clearPlace, makePlace, type Place } from '../work/place';
import { cutStates, type DiskState } from './cut-states';
import { recordedDisk } from './recorded-disk';

/**
 * The power goes after every change of the disk, in everything a person does, and the program is started again
 * on every state in which the disk may be then.
 *
 * @param every one state in so many is tried
 */
export async function powerCuts(every: number): Promise<{ tried: number; failures: readonly string[] }> {
  const below = mkdtempSync(join(tmpdir(), 'lw-power-'));
  const failures: string[] = [];
  let [tried, number] = [0, 0];
  try {
    for (const operation of OPERATIONS) {
      const { before, links, deeds, said, top, wrongs } = await recorded(below, operation);
      failures.push(...wrongs.map((wrong) => `${operation.name}, with no cut: ${wrong}`));
      for (let at = 0; at <= deeds.length; at++) {
        // Only after the last deed has the person been told anything.
        const told = at === deeds.length ? said : null;
        for (const state of cutStates(before, deeds.slice(0, at))) {
          if (number++ % every !== 0) continue;
          tried++;
          const found = await wrongsOf(below, operation, { state, links, top }, told);
          failures.push(
            ...found.map((wrong) => `${operation.name}, cut after ${at} of ${deeds.length}: ${wrong}`),
          );
        }
      }
    }
    return { tried, failures };
  } finally {
    rmSync(below, { recursive: true, force: true });
  }
}

async function recorded(below: string, operation: Operation) {
  const place = makePlace(below);
  const top = dirname(place.home);
  try {
    await operation.prepare(place);
    const before = new Map<string, Uint8Array>();
    const links = new Map<string, string>();
    for (const name of readdirSync(top, { recursive: true, encoding: 'utf8' })) {
      const path = join(top, name);
      const facts = lstatSync(path);
      if (facts.isSymbolicLink()) links.set(path, readlinkSync(path));
      else if (facts.isFile()) before.set(path, readFileSync(path));
    }
    const { fs, deeds } = recordedDisk();
    const said = await operation.run(place, fs);
    return { before, links, deeds, said, top, wrongs: await calmWrongs(operation, place, said) };
  } finally {
    clearPlace(place);
  }
}

interface Cut {
  readonly state: DiskState;
  readonly links: ReadonlyMap<string, string>;
  /** Where the paths of the state begin. */
  readonly top: string;
}

async function wrongsOf(below: string, operation: Operation, { state, links, top }: Cut, said: Said | null) {
  const place: Place = makePlace(below);
  const into = (path: string) => {
    const moved = join(dirname(place.home), relative(top, path));
    mkdirSync(dirname(moved), { recursive: true });
    return moved;
  };
  try {
    for (const [path, bytes] of state) writeFileSync(into(path), bytes);
    for (const [path, to] of links) symlinkSync(to, into(path));
    return await operation.wrongs(place, said);
  } catch (thrown) {
    return [`threw ${String(thrown)}`];
  } finally {
    clearPlace(place);
  }
}
