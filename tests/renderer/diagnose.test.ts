import { describe, expect, it } from 'vitest';
import { dictionaryOf } from '../../boards/diagnosis/dictionary';
import { faultsAsWritten } from '../../boards/diagnosis/faults/as-written';
import type { CauseId } from '../../boards/diagnosis/faults/causes';
import { readLog } from '../../boards/diagnosis/log/read-log';
import { type Reckoning, reckon } from '../../boards/diagnosis/log/reckoning';
import { withPairs } from '../../boards/diagnosis/pairs';
import { trialsOf } from '../../boards/diagnosis/trials/trials';
import type { Build } from '../../boards/document/build';
import { PriorZ } from '../../boards/document/prior';
import { answersIn } from '../../renderer/areas/diagnose/answers';
import { deskOver, type WorkerLike } from '../../renderer/areas/diagnose/reckon/desk';
import { type ReckonTask, type ReckonTold, reckoner } from '../../renderer/areas/diagnose/reckon/work-out';
import { today } from '../../renderer/areas/diagnose/today';
import { stepsWith, weighedWords } from '../../renderer/words/how-often-words';
import { done as carriedOut } from '../boards/edit/carried-out';
import { demo } from '../boards/findings/demo';
import { bench, grid, posts } from '../boards/fixtures/bench';

const machine = bench([posts('panel', grid(2, 5))], []);
const RECKONING: Reckoning = {
  suspects: [],
  doubles: [],
  noneOfThese: 1,
  noneLikeliest: true,
  contradicted: [],
  excluding: [],
  stops: [],
  looks: [],
  trials: [],
  effects: [],
  worksNow: false,
};

const said = (build: Build, ...what: readonly string[]): Build => ({
  ...build,
  trouble: { log: what.map((each) => ({ kind: 'noticed', what: each, answer: 'yes' })) },
});

/** A worker that answers when it is told to. */
function standIn() {
  const posted: ReckonTask[] = [];
  let ended = 0;
  const worker: WorkerLike = {
    onmessage: null,
    onerror: null,
    postMessage: (message: ReckonTask) => posted.push(message),
    terminate: () => {
      ended += 1;
    },
  };
  const tell = (data: ReckonTold) =>
    worker.onmessage?.call(worker as Worker, new MessageEvent('message', { data }));
  return {
    worker,
    posted,
    tell,
    done: () => tell({ kind: 'done', reckoning: RECKONING }),
    fail: () => worker.onerror?.call(worker as Worker, new Event('error') as ErrorEvent),
    ended: () => ended,
  };
}

describe('the desk where a log is reckoned with', () => {
  it('sends a wiring once, and of the logs that wait only the newest', () => {
    const { worker, posted, done } = standIn();
    const desk = deskOver(() => worker);
    desk.ask(said(machine, 'smoke'));
    desk.ask(said(machine, 'smoke', 'smell'));
    desk.ask(said(machine, 'smoke', 'smell', 'pop'));
    expect(posted).toHaveLength(1);
    done();
    done();
    expect(posted.map(({ build, log }) => [build !== undefined, log.length])).toEqual([
      [true, 1],
      [false, 3],
    ]);
    expect(desk.state.getState().last?.log).toHaveLength(3);
  });

  it('does not ask again for a build that only has another name, and does for another wiring', () => {
    const { worker, posted, done } = standIn();
    const desk = deskOver(() => worker);
    desk.ask(machine);
    done();
    desk.ask({ ...machine, name: 'Another name' });
    expect(posted).toHaveLength(1);
    desk.ask({ ...machine, seats: [] });
    expect(posted.map(({ build }) => build !== undefined)).toEqual([true, true]);
  });

  it('asks again where a cause is weighed otherwise, without sending the wiring, and not for the same weights', () => {
    const { worker, posted, done } = standIn();
    const desk = deskOver(() => worker);
    const priors = [{ cause: 'memory', factor: 3 }];
    desk.ask(machine);
    done();
    desk.ask({ ...machine, priors });
    done();
    desk.ask({ ...machine, name: 'Another name', priors: structuredClone(priors) });
    expect(posted.map(({ build, priors: sent }) => [build !== undefined, sent])).toEqual([
      [true, []],
      [false, priors],
    ]);
    expect(posted[0]?.build).not.toHaveProperty('priors');
  });

  it('tells how far the pairs are, and nothing more once it was stopped', () => {
    const first = standIn();
    const second = standIn();
    const workers = [first.worker, second.worker];
    const desk = deskOver(() => workers.shift() ?? second.worker);
    desk.ask(machine);
    first.tell({ kind: 'pairs', share: 0.25 });
    expect(desk.state.getState().pairs).toBe(0.25);
    desk.stop();
    expect(first.ended()).toBe(1);
    expect(desk.state.getState()).toMatchObject({ stopped: true, pairs: null, last: null });
    first.done();
    expect(desk.state.getState().last).toBeNull();
    desk.ask(machine);
    expect(second.posted[0]?.build).toBeDefined();
    second.done();
    expect(desk.state.getState()).toMatchObject({ stopped: false, last: { reckoning: RECKONING } });
  });

  it('does it in the window where no worker can be had, or where one fails', async () => {
    const asked: number[] = [];
    const inWindow = ({ log }: ReckonTask, tell: (told: ReckonTold) => void) => {
      asked.push(log.length);
      tell({ kind: 'done', reckoning: RECKONING });
    };
    const none = deskOver(() => {
      throw new Error('No worker here');
    }, inWindow);
    none.ask(said(machine, 'smoke'));
    await expect.poll(() => none.state.getState().last?.log.length).toBe(1);
    const failing = standIn();
    const other = deskOver(() => failing.worker, inWindow);
    other.ask(said(machine, 'smoke', 'smell'));
    failing.fail();
    await expect.poll(() => other.state.getState().last?.log.length).toBe(2);
    expect(asked).toEqual([1, 2]);
  });
});

describe('a cause that is met more or less often here than is usual', () => {
  const build = demo('wired');
  const log = [{ kind: 'noticed', what: 'clock-wrong', answer: 'yes' }] as const;
  const answered = (
    ask: ReturnType<typeof reckoner>,
    task: Omit<ReckonTask, 'wiring' | 'log'>,
  ): Reckoning => {
    let told: ReckonTold | undefined;
    ask({ ...task, wiring: 1, log }, (one) => {
      told = one;
    });
    if (told?.kind !== 'done') throw new Error('It was not answered');
    return told.reckoning;
  };
  const oddsOf = ({ suspects }: Reckoning, one: CauseId, other: CauseId) => {
    const chanceOf = (cause: CauseId) => suspects.find((each) => each.cause === cause)?.chance ?? 0;
    return chanceOf(one) / chanceOf(other);
  };

  it('has its odds against every other cause times the factor, by Bayes’ rule, and back when that is undone', () => {
    const ask = reckoner();
    const usual = answered(ask, { build, priors: [] });
    const often = answered(ask, { priors: [{ cause: 'coin-cell', factor: 10 }] });
    for (const other of ['memory', 'board-fault', 'psu-fault', 'firmware'] as const)
      expect(oddsOf(often, 'coin-cell', other) / oddsOf(usual, 'coin-cell', other)).toBeCloseTo(10, 9);
    expect(answered(ask, { priors: [] })).toEqual(usual);
  });

  it('is reckoned with as if the build had been opened so', () => {
    const ask = reckoner();
    answered(ask, { build, priors: [] });
    const weighed = carriedOut(
      build,
      { name: 'weigh-cause', args: { cause: 'coin-cell', factor: 0.3 } },
      { name: 'weigh-cause', args: { cause: 'memory', factor: 10 } },
    );
    expect(answered(ask, { priors: weighed.priors ?? [] })).toEqual(
      reckon(dictionaryOf(faultsAsWritten(weighed)), log, trialsOf(weighed), withPairs),
    );
  });

  it('is said by its step, from the most often down, and a number between two steps as it is', () => {
    expect(stepsWith(1).map(({ words }) => words)).toEqual([
      'much more often',
      'more often',
      'as usual',
      'less often',
      'much less often',
    ]);
    expect(stepsWith(4).map(({ factor }) => factor)).toEqual([10, 4, 3, 1, 0.3, 0.1]);
    expect([100, 10, 4, 1, 0.5, 0.1, 0.01].map(weighedWords)).toEqual([
      'much more often here',
      'much more often here',
      'more often here',
      undefined,
      'less often here',
      'much less often here',
      'much less often here',
    ]);
  });

  it('has steps that a build takes', () => {
    for (const { factor } of stepsWith(1))
      expect(PriorZ.safeParse({ cause: 'coin-cell', factor })).toMatchObject({ success: true });
  });
});

it('a question said both ways is answered both ways, and one before a fresh start is not answered', () => {
  const lines = readLog(
    [
      { kind: 'noticed', what: 'rattle', answer: 'yes' },
      { kind: 'started-over' },
      { kind: 'noticed', what: 'smoke', answer: 'yes' },
      { kind: 'noticed', what: 'smoke', answer: 'no' },
      { kind: 'noticed', what: 'no-beep', answer: 'no' },
    ],
    [],
  );
  expect([...answersIn(lines)]).toEqual([
    ['smoke', 'both'],
    ['no-beep', 'no'],
  ]);
});

it('today is the day of the calendar where the person is', () => {
  expect(today(new Date(2026, 1, 3, 23, 59))).toBe('2026-02-03');
});
