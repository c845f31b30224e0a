import { describe, expect, it } from 'vitest';
import { dictionaryOf } from '../../boards/diagnosis/dictionary';
import { faultsAsWritten } from '../../boards/diagnosis/faults/as-written';
import type { CauseId } from '../../boards/diagnosis/faults/causes';
import { readLog } from '../../boards/diagnosis/log/read-log';
import { type ReckoningPart, reckon, type Suspects } from '../../boards/diagnosis/log/reckoning';
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
const LAST_PART: ReckoningPart = { kind: 'effects', effects: [] };

const said = (build: Build, ...what: readonly string[]): Build => ({
  ...build,
  trouble: { log: what.map((each) => ({ kind: 'noticed', what: each, answer: 'yes' })) },
});

/** A worker that answers when it is told to, always to what it was asked last. */
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
  const tell = (part: ReckoningPart, asking = posted.at(-1)?.asking ?? 0) =>
    worker.onmessage?.call(worker as Worker, new MessageEvent('message', { data: { ...part, asking } }));
  return {
    worker,
    posted,
    tell,
    done: () => tell(LAST_PART),
    fail: () => worker.onerror?.call(worker as Worker, new Event('error') as ErrorEvent),
    ended: () => ended,
  };
}

describe('the desk where a log is reckoned with', () => {
  it('sends a wiring once, and every log at once', () => {
    const { worker, posted } = standIn();
    const desk = deskOver(() => worker);
    desk.ask(said(machine, 'smoke'));
    desk.ask(said(machine, 'smoke', 'smell'));
    desk.ask(said(machine, 'smoke', 'smell', 'pop'));
    expect(posted.map(({ build, log }) => [build !== undefined, log.length])).toEqual([
      [true, 1],
      [false, 2],
      [false, 3],
    ]);
  });

  it('hears nothing that is told to an older asking', () => {
    const { worker, posted, tell, done } = standIn();
    const desk = deskOver(() => worker);
    desk.ask(said(machine, 'smoke'));
    desk.ask(said(machine, 'smoke', 'smell'));
    tell(LAST_PART, posted[0]?.asking);
    tell({ kind: 'pairs', share: 0.5 }, posted[0]?.asking);
    expect(desk.state.getState()).toMatchObject({ effects: null, pairs: null });
    done();
    expect(desk.state.getState().effects?.of.log).toHaveLength(2);
  });

  it('keeps the former of each part until the next one is told', () => {
    const { worker, tell } = standIn();
    const desk = deskOver(() => worker);
    desk.ask(said(machine, 'smoke'));
    tell({ kind: 'reasons', reasons: [] });
    tell(LAST_PART);
    desk.ask(said(machine, 'smoke', 'smell'));
    tell({ kind: 'reasons', reasons: [] });
    const { reasons, effects } = desk.state.getState();
    expect([reasons?.of.log.length, effects?.of.log.length]).toEqual([2, 1]);
  });

  it('does not ask again for a build that only has another name, and does for another wiring', () => {
    const { worker, posted, done } = standIn();
    const desk = deskOver(() => worker);
    desk.ask(machine);
    desk.ask({ ...machine, name: 'A name while it is at work' });
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
    expect(desk.state.getState()).toMatchObject({ stopped: true, pairs: null, effects: null });
    first.done();
    expect(desk.state.getState().effects).toBeNull();
    desk.ask(machine);
    expect(second.posted[0]?.build).toBeDefined();
    second.done();
    expect(desk.state.getState()).toMatchObject({ stopped: false, effects: { told: LAST_PART } });
  });

  it('does it in the window where no worker can be had, or where one fails', () => {
    const asked: number[] = [];
    const inWindow = ({ log, asking }: ReckonTask, tell: (told: ReckonTold) => void) => {
      asked.push(log.length);
      tell({ ...LAST_PART, asking });
    };
    const none = deskOver(() => {
      throw new Error('No worker here');
    }, inWindow);
    none.ask(said(machine, 'smoke'));
    expect(none.state.getState().effects?.of.log.length).toBe(1);
    const failing = standIn();
    const other = deskOver(() => failing.worker, inWindow);
    other.ask(said(machine, 'smoke', 'smell'));
    failing.fail();
    expect(other.state.getState().effects?.of.log.length).toBe(2);
    expect(asked).toEqual([1, 2]);
  });
});

describe('a cause that is met more or less often here than is usual', () => {
  const build = demo('wired');
  const log = [{ kind: 'noticed', what: 'clock-wrong', answer: 'yes' }] as const;
  const reckonerAtOnce = () => {
    const waiting: (() => void)[] = [];
    const ask = reckoner((goOn) => waiting.push(goOn));
    return (task: Pick<ReckonTask, 'build' | 'priors'>): Suspects => {
      let told: Suspects | undefined;
      ask({ ...task, asking: 1, wiring: 1, log }, (one) => {
        if (one.kind === 'suspects') told = one.suspects;
      });
      for (let next = waiting.shift(); next; next = waiting.shift()) next();
      if (told === undefined) throw new Error('It was not answered');
      return told;
    };
  };
  const oddsOf = ({ suspects }: Suspects, one: CauseId, other: CauseId) => {
    const chanceOf = (cause: CauseId) => suspects.find((each) => each.cause === cause)?.chance ?? 0;
    return chanceOf(one) / chanceOf(other);
  };

  it('has its odds against every other cause times the factor, by Bayes’ rule, and back when that is undone', () => {
    const ask = reckonerAtOnce();
    const usual = ask({ build, priors: [] });
    const often = ask({ priors: [{ cause: 'coin-cell', factor: 10 }] });
    for (const other of ['memory', 'board-fault', 'psu-fault', 'firmware'] as const)
      expect(oddsOf(often, 'coin-cell', other) / oddsOf(usual, 'coin-cell', other)).toBeCloseTo(10, 9);
    expect(ask({ priors: [] })).toEqual(usual);
  });

  it('is reckoned with as if the build had been opened so', () => {
    const ask = reckonerAtOnce();
    ask({ build, priors: [] });
    const weighed = carriedOut(
      build,
      { name: 'weigh-cause', args: { cause: 'coin-cell', factor: 0.3 } },
      { name: 'weigh-cause', args: { cause: 'memory', factor: 10 } },
    );
    const { suspects } = reckon(dictionaryOf(faultsAsWritten(weighed)), log, trialsOf(weighed), withPairs);
    expect(ask({ priors: weighed.priors ?? [] }).suspects).toMatchObject(
      suspects.map(({ cause, chance }) => ({ cause, chance })),
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
