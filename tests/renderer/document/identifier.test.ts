import { describe, expect, test } from 'vitest';
import { blankHeader } from '../../../boards/library/blank-header';
import { identifierOver, type WorkerLike } from '../../../renderer/areas/document/meter/identifier';
import type { MeterAnswer, MeterTask } from '../../../renderer/areas/document/meter/work-out';

const GRID = { rows: 1, cols: 3, pitchMm: 2.54, numbering: { scheme: 'by-row', from: 'top-left' } } as const;
const task = (print: string): MeterTask => ({
  connector: blankHeader(GRID, { id: 'a', print, place: { xMm: 0, yMm: 0, turn: 0 } }),
  skipped: [],
});
const answerTo = (print: string): MeterAnswer => ({
  found: { ok: false, problem: { code: 'too-many-pins', pins: print.length, limit: 0 } },
  outcomes: [],
});

/** A worker that answers when it is told to. */
function standIn() {
  const posted: MeterTask[] = [];
  let ended = 0;
  const worker: WorkerLike = {
    onmessage: null,
    onerror: null,
    postMessage: (message: MeterTask) => posted.push(message),
    terminate: () => {
      ended += 1;
    },
  };
  const answer = () => {
    const last = posted.at(-1);
    if (last === undefined) throw new Error('Nothing was asked');
    const data = answerTo(last.connector.print);
    worker.onmessage?.call(worker as Worker, new MessageEvent('message', { data }));
  };
  const fail = () => worker.onerror?.call(worker as Worker, new Event('error') as ErrorEvent);
  return { worker, posted, answer, fail, ended: () => ended };
}

describe('what is worked out beside the window', () => {
  test('is one task at a time, and of those that wait only the newest', () => {
    const { worker, posted, answer } = standIn();
    const heard: string[] = [];
    const identifier = identifierOver(() => worker);
    for (const print of ['a', 'b', 'c']) identifier.ask(task(print), () => heard.push(print));
    expect(posted.map(({ connector }) => connector.print)).toEqual(['a']);
    answer();
    expect(posted.map(({ connector }) => connector.print)).toEqual(['a', 'c']);
    answer();
    expect(heard).toEqual(['c']);
  });

  test('is not answered any more once it was stopped, and a new task gets a new worker', () => {
    const first = standIn();
    const second = standIn();
    const workers = [first.worker, second.worker];
    const heard: string[] = [];
    const identifier = identifierOver(() => workers.shift() ?? second.worker);
    identifier.ask(task('a'), () => heard.push('a'));
    identifier.stop();
    expect(first.ended()).toBe(1);
    identifier.ask(task('b'), () => heard.push('b'));
    second.answer();
    expect(heard).toEqual(['b']);
  });

  test('is done by the window itself where no worker can be had, or where it fails', () => {
    const heard: string[] = [];
    const inWindow = ({ connector }: MeterTask) => answerTo(connector.print);
    const none = identifierOver(() => {
      throw new Error('No worker here');
    }, inWindow);
    none.ask(task('a'), () => heard.push('a'));
    const failing = standIn();
    identifierOver(() => failing.worker, inWindow).ask(task('b'), () => heard.push('b'));
    failing.fail();
    expect(heard).toEqual(['a', 'b']);
  });
});
