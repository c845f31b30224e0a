import { createStore, type StoreApi } from 'zustand/vanilla';
import { byIdentity } from '../../../../boards/base/by-identity';
import { machineOf, NO_PRIORS } from '../../../../boards/diagnosis/faults/faults';
import type { ReckoningPart } from '../../../../boards/diagnosis/log/reckoning';
import type { Build } from '../../../../boards/document/build';
import { logOf } from '../../../../boards/document/trouble';
import { laterByMessages } from './later';
import { type ReckonTask, type ReckonTold, reckoner, samePriors } from './work-out';

/** What the desk needs of a worker. */
export type WorkerLike = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

/** All that a reckoning is of; the wiring stands for the build. */
export type Question = Omit<ReckonTask, 'asking' | 'build'>;

type Asked = Required<ReckonTask>;

/** The parts of a reckoning, in the order in which they are told. */
export const PARTS = ['suspects', 'reasons', 'next', 'effects'] as const;
export type Part = (typeof PARTS)[number];

/** A part of a reckoning, and what it is of. */
export interface Reckoned<Kind extends Part> {
  readonly of: Question;
  readonly told: Extract<ReckoningPart, { readonly kind: Kind }>;
}

/** The last of each part: until the next one is told the former stands. */
export type Parts = { readonly [Kind in Part]: Reckoned<Kind> | null };

interface DeskState extends Parts {
  /** The share of the pairs of faults that is worked out, while they are; null otherwise. */
  readonly pairs: number | null;
  /** Whether the person stopped what was being worked out. */
  readonly stopped: boolean;
}

/** Where the log of a build is reckoned with. What is asked ends what was being reckoned for an older asking. */
export interface Desk {
  readonly state: StoreApi<DeskState>;
  /**
   * What is asked about a build: a number for its wiring and its tray, the same for builds that differ in names and
   * notes alone.
   */
  readonly taskOf: (build: Build) => Question;
  readonly ask: (build: Build) => void;
  /** Nothing that was asked is answered any more, until it is asked again. */
  readonly stop: () => void;
}

/** Where no worker can be had the window does it itself, in pieces. */
export function deskOver(open: () => WorkerLike, inWindow?: ReturnType<typeof reckoner>): Desk {
  const state = createStore<DeskState>()(() => ({
    suspects: null,
    reasons: null,
    next: null,
    effects: null,
    pairs: null,
    stopped: false,
  }));
  let worker: WorkerLike | null = null;
  /** The wiring that the worker has the build of. */
  let sent: number | null = null;
  /** What was asked last; it stays when it is answered. */
  let asked: Asked | null = null;
  let broken = false;
  let ownHands = inWindow;
  let askings = 0;
  let wirings = 0;
  const numberOf = byIdentity((_: Build) => ++wirings, machineOf);
  const taskOf = (build: Build): Question => ({
    wiring: numberOf(build),
    priors: build.priors ?? NO_PRIORS,
    log: logOf(build),
  });

  const hear = ({ asking, ...told }: ReckonTold) => {
    // What is told to an older asking is of what was said before.
    if (asked?.asking !== asking) return;
    if (told.kind === 'pairs') {
      state.setState({ pairs: told.share });
      return;
    }
    const { wiring, priors, log } = asked;
    state.setState({ [told.kind]: { of: { wiring, priors, log }, told }, pairs: null });
  };
  const byHand = (task: Asked) => {
    ownHands ??= reckoner(laterByMessages());
    ownHands(task, hear);
  };
  const failed = () => {
    worker?.terminate();
    [worker, sent, broken] = [null, null, true];
    if (asked !== null) byHand(asked);
  };
  const opened = (): WorkerLike => {
    const fresh = open();
    fresh.onmessage = ({ data }: MessageEvent<ReckonTold>) => worker === fresh && hear(data);
    fresh.onerror = () => worker === fresh && failed();
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
      const question = taskOf(build);
      const newest = asked ?? state.getState().effects?.of;
      if (newest && isOf(newest, question)) return;
      state.setState({ stopped: false, pairs: null });
      askings += 1;
      put({ ...question, asking: askings, build });
    },
    stop: () => {
      if (asked === null) return;
      worker?.terminate();
      [worker, sent, asked] = [null, null, null];
      state.setState({ stopped: true, pairs: null });
    },
  };
}

/** Whether a reckoning is of just this wiring, this weighing and this log. */
export function isOf(reckoned: Question, question: Question): boolean {
  const { length } = question.log;
  return (
    reckoned.wiring === question.wiring &&
    samePriors(reckoned.priors, question.priors) &&
    reckoned.log.length === length &&
    reckoned.log.every((entry, at) => entry === question.log[at])
  );
}

/** What the dictionary rests on: no photos, no log; how it is weighed comes beside it. */
function bare(build: Build): Build {
  const { trouble: _, priors: __, ...plain } = build;
  const { photos: ___, ...board } = build.board;
  return { ...plain, board };
}
