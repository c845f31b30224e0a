import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Dictionary, dictionaryOf } from '../../boards/diagnosis/dictionary';
import { faultsAsWritten } from '../../boards/diagnosis/faults/as-written';
import { reckon } from '../../boards/diagnosis/log/reckoning';
import { OBSERVATIONS } from '../../boards/diagnosis/observations/observations';
import { trialsOf } from '../../boards/diagnosis/trials/trials';
import type { Build } from '../../boards/document/build';
import type { LogEntry } from '../../boards/document/trouble';
import { type Desk, deskOver, PARTS, type WorkerLike } from '../../renderer/areas/diagnose/reckon/desk';
import type { Later } from '../../renderer/areas/diagnose/reckon/later';
import { type ReckonTask, type ReckonTold, reckoner } from '../../renderer/areas/diagnose/reckon/work-out';
import { bench, grid, posts } from '../boards/fixtures/bench';

const machine = bench([posts('panel', grid(2, 5))], []);
/** No sign that would make pairs of faults worth a thought: those are tried in the last test. */
const SIGNS = OBSERVATIONS.filter(({ stop }) => !stop)
  .slice(0, 4)
  .map(({ id }) => id);

const answeredWith = (whats: readonly string[]): Build => ({
  ...machine,
  trouble: { log: whats.map((what) => ({ kind: 'noticed', what, answer: 'no' })) },
});

let singles: Dictionary;
beforeAll(() => {
  singles = dictionaryOf(faultsAsWritten(machine));
});

/** A worker that is really one: each message takes its time, on the way there, on the way back, and in between. */
function workerBy(scheduler: fc.Scheduler, told: ReckonTold[]): WorkerLike {
  const later: Later = (goOn) => void scheduler.schedule(Promise.resolve('a piece')).then(goOn);
  const ask = reckoner(later);
  const lineTo = inLine(scheduler);
  const lineBack = inLine(scheduler);
  const worker: WorkerLike = {
    onmessage: null,
    onerror: null,
    terminate: () => undefined,
    postMessage: (task: ReckonTask) =>
      lineTo(() =>
        ask(structuredClone(task), (one) => {
          told.push(one);
          lineBack(() =>
            worker.onmessage?.call(
              worker as Worker,
              new MessageEvent('message', { data: structuredClone(one) }),
            ),
          );
        }),
      ),
  };
  return worker;
}

/** What comes one after the other, each when the scheduler lets it. */
function inLine(scheduler: fc.Scheduler): (arrive: () => void) => void {
  let last: Promise<unknown> = Promise.resolve();
  return (arrive) => {
    last = last.then(() => scheduler.schedule(Promise.resolve('a message'))).then(arrive);
  };
}

/** Answers given one after the other, each before, while or after what was said before is worked out. */
async function worked(
  scheduler: fc.Scheduler,
  logs: readonly (readonly string[])[],
  told: ReckonTold[],
  watch: (desk: Desk) => void = () => undefined,
): Promise<Desk> {
  const desk = deskOver(() => workerBy(scheduler, told));
  watch(desk);
  scheduler.scheduleSequence(
    logs.map((whats) => ({ builder: async () => desk.ask(answeredWith(whats)), label: 'an answer' })),
  );
  await scheduler.waitIdle();
  return desk;
}

const RUNS = { numRuns: 20 };
/** No two alike, so that a part tells of which it is. */
const LOGS = fc.uniqueArray(fc.subarray(SIGNS), { minLength: 1, maxLength: 4, selector: String });

function isOfLog(log: readonly LogEntry[] | undefined, whats: readonly string[]): boolean {
  return (
    log?.length === whats.length &&
    log.every((entry, at) => entry.kind === 'noticed' && entry.what === whats[at])
  );
}

describe('the parts of a reckoning', () => {
  it('come in their order, and only the newest asking is told any more', async () => {
    await fc.assert(
      fc.asyncProperty(fc.scheduler(), LOGS, async (scheduler, logs) => {
        const told: ReckonTold[] = [];
        await worked(scheduler, logs, told);
        const askings = told.map(({ asking }) => asking);
        expect(askings).toEqual([...askings].sort((a, b) => a - b));
        for (const asking of new Set(askings)) {
          const kinds = told.filter((one) => one.asking === asking).map(({ kind }) => kind);
          expect(kinds).toEqual(asking === askings.at(-1) ? PARTS : PARTS.slice(0, kinds.length));
        }
      }),
      RUNS,
    );
  });

  it('are never shown newer than those before them, and in the end are all of what was said last, as at one go', async () => {
    await fc.assert(
      fc.asyncProperty(fc.scheduler(), LOGS, async (scheduler, logs) => {
        const seen: number[][] = [];
        const desk = await worked(scheduler, logs, [], ({ state }) =>
          state.subscribe((parts) => {
            seen.push(PARTS.map((part) => logs.findIndex((whats) => isOfLog(parts[part]?.of.log, whats))));
          }),
        );
        for (const places of seen) expect(places).toEqual([...places].sort((a, b) => b - a));
        const { suspects, reasons, next, effects } = desk.state.getState();
        const { log } = answeredWith(logs.at(-1) ?? []).trouble ?? { log: [] };
        for (const part of [suspects, reasons, next, effects]) expect(part?.of.log).toEqual(log);
        const whole = reckon(singles, log, trialsOf(machine));
        expect(suspects?.told.suspects).toMatchObject({ noneOfThese: whole.noneOfThese, stops: whole.stops });
        expect(next?.told.next).toEqual({ looks: whole.looks, trials: whole.trials });
        expect(effects?.told.effects).toEqual(whole.effects);
        for (const { cause, ...why } of reasons?.told.reasons ?? [])
          expect(whole.suspects.find((suspect) => suspect.cause === cause)).toMatchObject(why);
      }),
      RUNS,
    );
  });
});
