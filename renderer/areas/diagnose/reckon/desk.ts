import { createStore, type StoreApi } from 'zustand/vanilla';
import { byIdentity } from '../../../../boards/base/by-identity';
import { machineOf, NO_PRIORS } from '../../../../boards/diagnosis/faults/faults';
import type { Reckoning } from '../../../../boards/diagnosis/log/reckoning';
import type { Build } from '../../../../boards/document/build';
import { logOf } from '../../../../boards/document/trouble';
import { type ReckonTask, type ReckonTold, reckoner, samePriors } from './work-out';

/** What the desk needs of a worker. */
export type WorkerLike = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

type Asked = Required<ReckonTask>;

/** All that a reckoning is of; the wiring stands for the build. */
type Question = Omit<Asked, 'build'>;

/** A reckoning, and what it is of. */
interface Reckoned extends Question {
  readonly reckoning: Reckoning;
}

interface DeskState {
  readonly last: Reckoned | null;
  /** The share of the pairs of faults that is worked out, while they are; null otherwise. */
  readonly pairs: number | null;
  /** Whether the person stopped what was being worked out. */
  readonly stopped: boolean;
}

/** Where the log of a build is reckoned with, one after the other; of those that wait only the newest counts. */
export interface Desk {
  readonly state: StoreApi<DeskState>;
  /** What is asked about a build: a number for its wiring and its tray, the same for builds that differ in names and notes alone. */
  readonly taskOf: (build: Build) => Question;
  readonly ask: (build: Build) => void;
  /** Nothing that was asked is answered any more, until it is asked again. */
  readonly stop: () => void;
}

/** Where no worker can be had the window does it itself, and stands still meanwhile. */
export function deskOver(open: () => WorkerLike, inWindow = reckoner()): Desk {
  const state = createStore<DeskState>()(() => ({ last: null, pairs: null, stopped: false }));
  let worker: WorkerLike | null = null;
  /** The wiring that the worker has the build of. */
  let sent: number | null = null;
  let asked: Asked | null = null;
  let waiting: Asked | null = null;
  let broken = false;
  let wirings = 0;
  const numberOf = byIdentity((_: Build) => ++wirings, machineOf);
  const taskOf = (build: Build): Question => ({
    wiring: numberOf(build),
    priors: build.priors ?? NO_PRIORS,
    log: logOf(build),
  });

  const hear = (task: Asked, told: ReckonTold) => {
    if (told.kind === 'pairs') {
      state.setState({ pairs: told.share });
      return;
    }
    const { build: _, ...question } = task;
    asked = null;
    state.setState({ last: { ...question, reckoning: told.reckoning }, pairs: null });
    const next = waiting;
    waiting = null;
    if (next !== null) put(next);
  };
  const byHand = (task: Asked) => {
    // Not at once: the window shows first that it is at work.
    setTimeout(() => asked === task && inWindow(task, (told) => hear(task, told)));
  };
  const failed = () => {
    worker?.terminate();
    [worker, sent, broken] = [null, null, true];
    if (asked !== null) byHand(asked);
  };
  const opened = (): WorkerLike => {
    const fresh = open();
    fresh.onmessage = ({ data }: MessageEvent<ReckonTold>) => asked !== null && hear(asked, data);
    fresh.onerror = failed;
    return fresh;
  };
  const put = (task: Asked) => {
    asked = task;
    if (broken) {
      byHand(task);
      return;
    }
    try {
      worker ??= opened();
      const { build, ...known } = task;
      worker.postMessage(sent === task.wiring ? known : { ...known, build: bare(build) });
      sent = task.wiring;
    } catch {
      failed();
    }
  };
  return {
    state,
    taskOf,
    ask: (build) => {
      const task = { ...taskOf(build), build };
      const newest = waiting ?? asked ?? state.getState().last;
      if (newest && isOf(newest, task)) return;
      state.setState({ stopped: false });
      if (asked === null) put(task);
      else waiting = task;
    },
    stop: () => {
      if (asked === null) return;
      worker?.terminate();
      [worker, sent, asked, waiting] = [null, null, null, null];
      state.setState({ stopped: true, pairs: null });
    },
  };
}

/** Whether a reckoning is of just this wiring, this weighing and this log. */
export function isOf(reckoned: Question, task: Question): boolean {
  const { length } = task.log;
  return (
    reckoned.wiring === task.wiring &&
    samePriors(reckoned.priors, task.priors) &&
    reckoned.log.length === length &&
    reckoned.log.every((entry, at) => entry === task.log[at])
  );
}

/** What the dictionary rests on: no photos, no log; how it is weighed comes beside it. */
function bare(build: Build): Build {
  const { trouble: _, priors: __, ...plain } = build;
  const { photos: ___, ...board } = build.board;
  return { ...plain, board };
}
