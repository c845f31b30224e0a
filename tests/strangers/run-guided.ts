import { Session } from 'node:inspector';
import { Dice } from '../boards/dice';
import { damaged } from './damage/damaged';
import { base64, type MutantFailure, noteFailure } from './failures';
import { judge } from './judges';
import { KINDS, type Kind, originals, type SoundFiles } from './originals';
import type { MutantRun } from './run-mutants';
import { beginMeasure } from './took';

export interface GuidedRun extends Pick<MutantRun, 'seed' | 'frozen'> {
  readonly minutes: number;
  /** What earlier runs kept, in base64, by kind. */
  readonly corpus: Readonly<Partial<Record<Kind, readonly string[]>>>;
}

export interface GuidedReport {
  readonly tried: number;
  readonly minutes: number;
  /** Places of the program that were reached by sound files, and by anything at all. */
  readonly reachedAtFirst: number;
  readonly reached: number;
  /** What reached a place that nothing before it did, in base64. */
  readonly kept: readonly { readonly kind: Kind; readonly data: string }[];
  readonly failures: readonly MutantFailure[];
  /** The most that one took, and the number of that. */
  readonly slowestMs: number;
  readonly slowest: number;
}

const MINUTE_MS = 60_000;
/** How often damage begins from what reached something new, not from a sound file. */
const FROM_KEPT = { of: 4, times: 3 };

/**
 * Damages files for so many minutes, led by what the program does with them: whatever reaches a place of
 * its code that nothing before it reached is kept, and damaged again. So it gets, step by step, behind checks
 * that no single damage would get behind.
 *
 * @param began told of the number of each before it is read
 */
export async function runGuided(
  { seed, minutes, frozen, corpus }: GuidedRun,
  began: (number: number) => void = () => undefined,
): Promise<GuidedReport> {
  const dice = new Dice(seed);
  const sound = originals(frozen);
  const pool = poolOf(corpus);
  const reached = reachedCode();
  const kept: { kind: Kind; data: string }[] = [];
  const failures: MutantFailure[] = [];
  let [slowestMs, slowest] = [0, 0];
  const read = async (number: number, kind: Kind, bytes: Uint8Array): Promise<void> => {
    began(number);
    const took = beginMeasure();
    try {
      await judge(kind, bytes, false);
    } catch (thrown) {
      noteFailure(failures, { number, kind, bytes }, thrown);
    }
    const tookMs = took();
    if (tookMs > slowestMs) [slowestMs, slowest] = [tookMs, number];
  };
  let tried = 0;
  for (const kind of KINDS)
    for (const bytes of [...sound[kind], ...(pool.get(kind) ?? [])]) await read(tried++, kind, bytes);
  reached.look();
  const reachedAtFirst = reached.count();
  const start = performance.now();
  while (performance.now() - start < minutes * MINUTE_MS) {
    const kind = dice.pick(KINDS) ?? 'build';
    const bytes = damaged(kind, chosen(kind, sound, pool, dice), sound, dice);
    await read(tried++, kind, bytes);
    if (!reached.look()) continue;
    pool.get(kind)?.push(bytes);
    kept.push({ kind, data: base64(bytes) });
  }
  const ran = (performance.now() - start) / MINUTE_MS;
  const places = { reachedAtFirst, reached: reached.count() };
  return { tried, minutes: ran, ...places, kept, failures, slowestMs, slowest };
}

type Pool = ReadonlyMap<Kind, Uint8Array[]>;

function poolOf(corpus: GuidedRun['corpus']): Pool {
  return new Map(
    KINDS.map((kind) => [kind, (corpus[kind] ?? []).map((data) => Buffer.from(data, 'base64'))]),
  );
}

/** What is damaged: most often what reached something new, else a sound file. */
function chosen(kind: Kind, sound: SoundFiles, pool: Pool, dice: Dice): Uint8Array {
  const fromPool = dice.below(FROM_KEPT.of) < FROM_KEPT.times ? dice.pick(pool.get(kind) ?? []) : undefined;
  return fromPool ?? dice.pick(sound[kind]) ?? new Uint8Array();
}

/** The places of this bundle's code that have run, as the engine counts them block by block. */
function reachedCode() {
  const session = new Session();
  session.connect();
  const places = new Set<string>();
  const ask = (method: string, params: object = {}): unknown => {
    let answer: unknown;
    session.post(method, params, (failed, given) => {
      if (failed) throw failed;
      answer = given;
    });
    return answer;
  };
  ask('Profiler.enable');
  ask('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
  return {
    count: () => places.size,
    /** Whether anything has run since the last look that never had before. */
    look: (): boolean => {
      const before = places.size;
      const { result } = ask('Profiler.takePreciseCoverage') as Coverage;
      for (const { url, functions } of result) {
        if (url !== import.meta.url) continue;
        for (const { ranges } of functions)
          for (const { startOffset, endOffset, count } of ranges)
            if (count > 0) places.add(`${startOffset}-${endOffset}`);
      }
      return places.size > before;
    },
  };
}

interface Coverage {
  readonly result: readonly {
    readonly url: string;
    readonly functions: readonly {
      readonly ranges: readonly {
        readonly startOffset: number;
        readonly endOffset: number;
        readonly count: number;
      }[];
    }[];
  }[];
}
