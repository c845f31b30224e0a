import { describe, expect, it } from 'vitest';
import { readLog } from '../../boards/diagnosis/log/read-log';
import type { Reckoning } from '../../boards/diagnosis/log/reckoning';
import type { Build } from '../../boards/document/build';
import { answersIn } from '../../renderer/areas/diagnose/answers';
import { deskOver, type WorkerLike } from '../../renderer/areas/diagnose/reckon/desk';
import type { ReckonTask, ReckonTold } from '../../renderer/areas/diagnose/reckon/work-out';
import { today } from '../../renderer/areas/diagnose/today';
import { bench, grid, posts } from '../boards/fixtures/bench';

const machine = bench([posts('panel', grid(2, 5))], []);
const RECKONING: Reckoning = {
  suspects: [],
  doubles: [],
  noneOfThese: 1,
  noneLikeliest: true,
  contradicted: [],
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
