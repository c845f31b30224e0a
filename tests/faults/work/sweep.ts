import type { FileSystem } from '../../../electron/host/file-system';
import { lastingLeftovers, leftovers } from './leftovers';
import { calmWrongs, type Operation } from './operation';
import { clearPlace, makePlace } from './place';

/** A disk that goes wrong as it is told. */
export interface BadDisk {
  /** The disk on which operation `at`, counted from 1, goes wrong; 0 for none. */
  readonly arm: (at: number, fault: string, lasting: boolean) => FileSystem;
  /** Sound again; what was done since it was armed. */
  readonly disarm: () => Done;
}

interface Done {
  /** "create", "write" and so on. */
  readonly steps: readonly string[];
  /** Whether anything was made to go wrong: a run may take another order, and never come to what was to fail. */
  readonly wentWrong: boolean;
}

/** Faults that are about writes alone: at any other step nothing would go wrong. */
const OF_WRITES = ['short', 'full'];
/** Begins with one write; going wrong once, it would be the same as one short write. */
const FOR_EVER = ['full'];

export interface SweepOptions {
  /** The folder in which the disk goes wrong. */
  readonly below: string;
  readonly operations: readonly Operation[];
  readonly faults: readonly string[];
  /** Leaves cases out, for a sweep of bounded size. */
  readonly takes?: (number: number) => boolean;
}

export interface Swept {
  /** Cases in which something went wrong. */
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
    steps[operation.name] = calm.steps;
    for (const fault of faults) {
      for (const lasting of FOR_EVER.includes(fault) ? [true] : [false, true]) {
        for (const [before, step] of calm.steps.entries()) {
          if ((OF_WRITES.includes(fault) && step !== 'write') || !takes(number++)) continue;
          const { wrongs, wentWrong } = await tryOnce(disk, below, operation, before + 1, fault, lasting);
          failures.push(...wrongs);
          if (wentWrong) tried++;
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
): Promise<Done & { readonly wrongs: readonly string[] }> {
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
    const when = `${operation.name}, ${fault} at ${at} (${done.steps[at - 1] ?? ''})${lasting ? ' and for ever' : ''}`;
    return { wrongs: [...wrongs, ...left].map((wrong) => `${when}: ${wrong}`), ...done };
  } finally {
    disk.disarm();
    clearPlace(place);
  }
}
