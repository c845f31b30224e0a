import { useEffect, useMemo, useState } from 'react';
import { useStore } from 'zustand';
import { byIdentity } from '../../../boards/base/by-identity';
import { evidenceOf, type ReadLine, readLog, tellingLines } from '../../../boards/diagnosis/log/read-log';
import type { Reckoning } from '../../../boards/diagnosis/log/reckoning';
import type { ObservationId } from '../../../boards/diagnosis/observations/observations';
import { stopsIn } from '../../../boards/diagnosis/trials/next-trials';
import type { Trial } from '../../../boards/diagnosis/trials/trial';
import { trialsOf } from '../../../boards/diagnosis/trials/trials';
import type { Build } from '../../../boards/document/build';
import { logOf } from '../../../boards/document/trouble';
import { useBuild, useWorkbench, type Workbench } from '../../workbench';
import { type Desk, deskOver, isOf } from './reckon/desk';

/** After so long the person is told what it waits for, and offered to stop it. */
const LONG_MS = 1_000;

/** The trouble of the open build: what was said, and what is believed of it. */
export interface Diagnosis {
  readonly build: Build;
  readonly lines: readonly ReadLine[];
  readonly trials: readonly Trial[];
  /** What was said that ends all trying: known at once, whatever is still being worked out. */
  readonly stops: readonly ObservationId[];
  /** The last reckoning; null before the first. */
  readonly reckoning: Reckoning | null;
  /** "working", "long" and "stopped": the reckoning is of what was said before. */
  readonly state: 'working' | 'long' | 'ready' | 'stopped';
  /** The share of the pairs of faults that is worked out, while they are. */
  readonly pairs: number | null;
  readonly stop: () => void;
  readonly again: () => void;
}

/** One desk for as long as the window is there: what each fault would show stays known while areas change. */
const deskOf = byIdentity((_: Workbench): Desk => {
  return deskOver(
    () => new Worker(new URL('./reckon/diagnose-worker.ts', import.meta.url), { type: 'module' }),
  );
});

export function useDiagnosis(): Diagnosis {
  const desk = deskOf(useWorkbench());
  const build = useBuild();
  const { last, pairs, stopped } = useStore(desk.state);
  const trials = useMemo(() => trialsOf(build), [build]);
  const lines = useMemo(() => readLog(logOf(build), trials), [build, trials]);
  const stops = useMemo(() => stopsIn(evidenceOf(tellingLines(lines).map(({ told }) => told))), [lines]);
  const task = desk.taskOf(build);
  const ready = last !== null && isOf(last, task);
  const [long, setLong] = useState(false);
  useEffect(() => desk.ask(build), [desk, build]);
  useEffect(() => {
    if (ready) return;
    const timer = setTimeout(() => setLong(true), LONG_MS);
    return () => {
      clearTimeout(timer);
      setLong(false);
    };
  }, [ready]);
  return {
    build,
    lines,
    trials,
    stops,
    reckoning: last?.wiring === task.wiring ? last.reckoning : null,
    state: ready ? 'ready' : stopped ? 'stopped' : long ? 'long' : 'working',
    pairs,
    stop: desk.stop,
    again: () => desk.ask(build),
  };
}
