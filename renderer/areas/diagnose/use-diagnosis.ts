import { useEffect, useMemo, useState } from 'react';
import { useStore } from 'zustand';
import { byIdentity } from '../../../boards/base/by-identity';
import type { CauseId } from '../../../boards/diagnosis/faults/causes';
import type { LineEffect } from '../../../boards/diagnosis/log/effects';
import { evidenceOf, type ReadLine, readLog, tellingLines } from '../../../boards/diagnosis/log/read-log';
import type { Reasons } from '../../../boards/diagnosis/log/reasons';
import type { NextDoings, Suspects } from '../../../boards/diagnosis/log/reckoning';
import { type Stop, stopsIn } from '../../../boards/diagnosis/trials/held-back';
import type { Trial } from '../../../boards/diagnosis/trials/trial';
import { trialsOf } from '../../../boards/diagnosis/trials/trials';
import type { Build } from '../../../boards/document/build';
import { type LogEntry, logOf } from '../../../boards/document/trouble';
import { useBuild, useWorkbench, type Workbench } from '../../workbench';
import {
  type Desk,
  deskOver,
  isOf,
  PARTS,
  type Part,
  type Parts,
  type Question,
  type Reckoned,
} from './reckon/desk';

/** After so long the person is told what it waits for, and offered to stop it. */
const LONG_MS = 1_000;

/** Why each cause is suspected as much as it is, and the lines of the log that the places of its reasons are in. */
interface WhySuspected {
  readonly lines: readonly ReadLine[];
  readonly of: ReadonlyMap<CauseId, Reasons>;
}

/** The trouble of the open build: what was said, and what is believed of it. */
export interface Diagnosis {
  readonly build: Build;
  readonly lines: readonly ReadLine[];
  readonly trials: readonly Trial[];
  /** What was said that ends all trying: known at once, whatever is still being worked out. */
  readonly stops: readonly Stop[];
  /** The last of each part of the reckoning, null before the first: what is believed, why, and what to do next. */
  readonly believed: Suspects | null;
  readonly why: WhySuspected | null;
  readonly next: NextDoings | null;
  readonly effects: ReadonlyMap<LogEntry, LineEffect>;
  /** The parts that are still of what was said before. */
  readonly awaited: ReadonlySet<Part>;
  /** Whether nothing is awaited; "long" where something is for more than a second, or it was "stopped". */
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
  const workbench = useWorkbench();
  const desk = deskOf(workbench);
  const build = useBuild();
  const { suspects, reasons, next, effects, pairs, stopped } = useStore(desk.state);
  const trials = useMemo(() => trialsOf(build), [build]);
  const lines = useMemo(() => readLog(logOf(build), trials), [build, trials]);
  const stops = useMemo(() => stopsIn(evidenceOf(tellingLines(lines).map(({ told }) => told))), [lines]);
  const question = desk.taskOf(build);
  const parts = { suspects, reasons, next, effects };
  const awaited = awaitedOf(parts, question);
  const ready = awaited.size === 0;
  const [long, setLong] = useState(false);
  useEffect(() => desk.ask(build), [desk, build]);
  // An answer is on its way before anything is drawn of it.
  useEffect(
    () => workbench.editor.subscribe(({ open }) => open && desk.ask(open.history.present)),
    [desk, workbench],
  );
  useEffect(() => {
    if (ready) return;
    const timer = setTimeout(() => setLong(true), LONG_MS);
    return () => {
      clearTimeout(timer);
      setLong(false);
    };
  }, [ready]);
  const why = useMemo(() => reasons && whyIn(reasons, trials), [reasons, trials]);
  const effectOf = useMemo(() => effectsByEntry(effects), [effects]);
  const { wiring } = question;
  return {
    build,
    lines,
    trials,
    stops,
    believed: suspects?.of.wiring === wiring ? suspects.told.suspects : null,
    why: reasons?.of.wiring === wiring ? why : null,
    next: next?.of.wiring === wiring ? next.told.next : null,
    effects: effects?.of.wiring === wiring ? effectOf : NO_EFFECTS,
    awaited,
    state: ready ? 'ready' : stopped ? 'stopped' : long ? 'long' : 'working',
    pairs,
    stop: desk.stop,
    again: () => desk.ask(build),
  };
}

const NO_EFFECTS: ReadonlyMap<LogEntry, LineEffect> = new Map();

function awaitedOf(parts: Parts, question: Question): ReadonlySet<Part> {
  return new Set(
    PARTS.filter((part) => {
      const last = parts[part];
      return last === null || !isOf(last.of, question);
    }),
  );
}

/** The places of reasons are in the log that they are of, which may have become another one since. */
function whyIn({ of, told }: Reckoned<'reasons'>, trials: readonly Trial[]): WhySuspected {
  return {
    lines: readLog(of.log, trials),
    of: new Map(told.reasons.map(({ cause, ...reasons }) => [cause, reasons])),
  };
}

/** A line keeps what it changed while others come and go. */
function effectsByEntry(effects: Reckoned<'effects'> | null): ReadonlyMap<LogEntry, LineEffect> {
  return new Map(
    effects?.told.effects.flatMap((each) => {
      const entry = effects.of.log[each.at];
      return entry ? [[entry, each] as const] : [];
    }),
  );
}
