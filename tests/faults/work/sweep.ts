import type { FileSystem } from '../../../electron/host/file-system';
import { lastingLeftovers, leftovers } from './leftovers';
import { calmWrongs, type Operation } from './operation';
import { clearPlace, makePlace } from './place';

/** A disk that goes wrong as it is told. */
export interface BadDisk {
  /** The disk on which operation `at`, counted from 1, goes wrong; 0 for none. */
  readonly arm: (at: number, fault: string, lasting: boolean) => FileSystem;
  /** Sound again; what was done since it was armed, "create", "write" and so on. */
  readonly disarm: () => readonly string[];
}

export interface SweepOptions {
  /** The folder in which the disk goes wrong. */
  readonly below: string;
  readonly operations: readonly Operation[];
  readonly faults: readonly string[];
  /** Leaves cases out, for a sweep of bounded size. */
  readonly takes?: (number: number) => boolean;
}

export interface Swept {
  readonly tried: number;
  readonly failures: readonly string[];
  /** What each operation does to files when nothing goes wrong. */
  readonly steps: Readonly<Record<string, readonly string[]>>;
}

/** Every file operation of everything a person does goes wrong in every way, once and for ever. */
export async function sweep(disk: BadDisk, options: SweepOptions): Promise<Swept> {
  const { below, operations, faults, takes = () => true } = options;
  const failures: string[] = [];
  const steps: Record<string, readonly string[]> = {};
  let tried = 0;
  let number = 0;
  for (const operation of operations) {
    const calm = await tryOnce(disk, below, operation, 0, 'none', false);
    failures.push(...calm.wrongs);
    steps[operation.name] = calm.done;
    for (const fault of faults) {
      for (const lasting of [false, true]) {
        for (let at = 1; at <= calm.done.length; at++) {
          if (!takes(number++)) continue;
          failures.push(...(await tryOnce(disk, below, operation, at, fault, lasting)).wrongs);
          tried++;
        }
      }
    }
  }
  return { tried, failures, steps };
}

type Told = Awaited<ReturnType<Operation['run']>>;

async function tryOnce(
  disk: BadDisk,
  below: string,
  operation: Operation,
  at: number,
  fault: string,
  lasting: boolean,
): Promise<{ readonly wrongs: readonly string[]; readonly done: readonly string[] }> {
  const place = makePlace(below);
  try {
    await operation.prepare(place);
    const fs = disk.arm(at, fault, lasting);
    const said = await operation.run(place, fs).catch((thrown: unknown) => thrown);
    const done = disk.disarm();
    const wrongs =
      said instanceof Error
        ? [`threw ${said.message}`]
        : at === 0
          ? await calmWrongs(operation, place, said as Told)
          : await operation.wrongs(place, said as Told);
    // A disk that fails once takes away what it is told to; only one that fails for ever leaves it for later.
    const left = lasting ? await lastingLeftovers(place) : leftovers(place).map((path) => `is left: ${path}`);
    const when = `${operation.name}, ${fault} at ${at} (${done[at - 1] ?? ''})${lasting ? ' and for ever' : ''}`;
    return { wrongs: [...wrongs, ...left].map((wrong) => `${when}: ${wrong}`), done };
  } finally {
    disk.disarm();
    clearPlace(place);
  }
}
